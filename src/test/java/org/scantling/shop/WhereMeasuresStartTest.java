package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;

/** Every list says from where it measures, and nothing is measured from what may stand off. */
class WhereMeasuresStartTest {
  private static String order(Built built) {
    return Jobs.page(built, ListKind.ORDER);
  }

  /** Middles of the rails 28 in over the ground, the level line 12 in over it: 16 in over that. */
  @Test
  void housings_are_marked_from_the_level_line_once_the_posts_stand() {
    Built built = Jobs.wish("bean-row");

    assertThat(order(built))
        .doesNotContain("Cut the rail housings while")
        .containsSubsequence(
            "Stand the four end posts", "Mark every top", "centers 1'-4\" above the line");
    assertThat(Jobs.page(built, ListKind.CUT_LIST))
        .contains("marked from the level line once the posts stand, centers 1'-4\" above it");
    assertThat(Lists.of(built).gangs())
        .isNotEmpty()
        .noneMatch(gang -> gang.marks().stream().anyMatch(mark -> mark.startsWith("P")));
  }

  @Test
  void posts_on_brackets_are_housed_on_trestles() {
    Built built = Jobs.wish("stone-terrace");
    assertThat(order(built))
        .contains("Cut the rail housings while the posts lie on sawhorses")
        .doesNotContain("from the level line and not from the feet");
    assertThat(Jobs.page(built, ListKind.CUT_LIST)).doesNotContain("once the posts stand");
  }

  /**
   * By hand: ground and rails fall 6 in 100. The middle of the rail is 28 in over the ground at A1
   * and 3 3/4 in on, at the face of the post, 0.225 in less; the level line 12 in over it. The
   * housing is 5 1/2 in times the root of 1 + 0.06 squared and 1/8 to spare: 5 5/8 in. So 15.775
   * less 2.813: 1'-0 15/16".
   */
  @Test
  void housings_of_falling_rails_are_told_post_by_post_from_the_level_line() {
    Built built = Jobs.wish("sloping-path");

    assertThat(order(built))
        .doesNotContain("Cut the rail housings while")
        .contains("Leave the posts without housings")
        .contains("post by post, as the set-out has their edges");
    assertThat(Jobs.page(built, ListKind.CUT_LIST))
        .contains("on every post where the set-out has them; use the distance from the foot only");
    assertThat(Jobs.page(built, ListKind.SET_OUT))
        .contains(
            "A1, B1: rail housing on the side toward the last post: lower edge above the level"
                + " line 1'-0 15/16\", upper edge above the level line 1'-6 9/16\"")
        .contains("A5, B5: rail housing on the side toward the first post: lower edge below");
    assertThat(Lists.of(built).gangs())
        .noneMatch(gang -> gang.marks().stream().anyMatch(mark -> mark.startsWith("P")));
  }

  /** The set-out tells each post's own heights over the level line, and no foot comes into it. */
  @Test
  void housings_of_stepped_rails_are_told_post_by_post_from_the_level_line_too() {
    Built built = Jobs.wish("windy-hill", "site.slope=12 %");
    assertThat(new Spots(built).all())
        .filteredOn(each -> each.what().startsWith("rail housing"))
        .hasSizeGreaterThan(2)
        .allSatisfy(
            each ->
                assertThat(each.measures()).allMatch(it -> it.name().endsWith("the level line")));
    assertThat(ListCsv.of(Lists.of(built), ListKind.SET_OUT, UnitSystem.IMPERIAL))
        .contains("rail housing on the side toward the last post: lower edge");
  }

  @Test
  void the_cut_list_and_the_set_out_say_where_their_measures_start() {
    Built built = Jobs.wish("sloping-path");

    assertThat(Jobs.page(built, ListKind.CUT_LIST))
        .contains("Every post is measured from its foot")
        .contains("The first end of a header is its end toward A1");
    assertThat(Jobs.page(built, ListKind.SET_OUT)).contains("Everything is measured from A1");
  }
}

package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;

/** Every list says from where it measures, and nothing is measured from what may stand off. */
class WhereMeasuresStartTest {
  private static String order(Built built) {
    return page(built, ListKind.ORDER);
  }

  private static String page(Built built, ListKind kind) {
    return TextPage.print(
            ListPages.of(Lists.of(built), kind, UnitSystem.IMPERIAL),
            PrintOptions.plain(UnitSystem.IMPERIAL))
        .replaceAll("\\s+", " ");
  }

  /** Middles of the rails 28 in over the ground, the level line 12 in over it: 16 in over that. */
  @Test
  void housings_are_marked_from_the_level_line_once_the_posts_stand() {
    Built built = Jobs.wish("bean-row");

    assertThat(order(built))
        .doesNotContain("Cut the rail housings while")
        .containsSubsequence(
            "Stand the four end posts", "Mark every top", "centers 1'-4\" above the line");
    assertThat(page(built, ListKind.CUT_LIST))
        .contains("marked from the level line once the posts stand, centers 1'-4\" above it");
    assertThat(Lists.of(built).gangs())
        .isNotEmpty()
        .noneMatch(gang -> gang.marks().stream().anyMatch(mark -> mark.startsWith("P")));
  }

  @Test
  void posts_on_brackets_or_beside_falling_rails_are_housed_on_trestles() {
    for (Built built : List.of(Jobs.wish("stone-terrace"), Jobs.wish("sloping-path"))) {
      assertThat(order(built))
          .contains("Cut the rail housings while the posts lie on sawhorses")
          .doesNotContain("from the level line and not from the feet");
      assertThat(page(built, ListKind.CUT_LIST)).doesNotContain("once the posts stand, centers");
    }
  }

  @Test
  void the_cut_list_and_the_set_out_say_where_their_measures_start() {
    Built built = Jobs.wish("sloping-path");

    assertThat(page(built, ListKind.CUT_LIST))
        .contains("Every post is measured from its foot")
        .contains("The first end of a header is its end toward A1");
    assertThat(page(built, ListKind.SET_OUT)).contains("Everything is measured from A1");
  }
}

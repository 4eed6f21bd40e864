package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The scenario on the windy hill: boards 1 1/2 thick on either side of posts 5 1/2 broad, tops
 * flush, three pairs of posts 2'-10" apart, a crossbeam over each. Notches are 3/4" deep, so
 * between two of them 3/4" of wood would stand in the post.
 */
class CrossbeamOverPostTest {

  @Test
  void a_crossbeam_over_a_post_is_notched_right_across_boards_and_post() {
    Pieces pieces = Pieces.of(Jobs.scenario("windy-hill"));
    Piece over = crossbeam(pieces, 2);
    assertThat(over.count()).isEqualTo(3);
    // 1 1/2 + 5 1/2 + 1 1/2, and 1/8 of room.
    assertThat(over.shape().recesses())
        .allSatisfy(each -> assertThat(each.widthIn()).isEqualTo(8.625))
        .allSatisfy(each -> assertThat(each.depthIn()).isEqualTo(0.75));
    assertThat(pieces.overPosts()).containsExactly(over.mark());
  }

  /** Three spaces to a bay: two crossbeams between the posts of each of two bays. */
  @Test
  void the_crossbeams_between_posts_keep_a_notch_for_each_board() {
    Pieces pieces = Pieces.of(Jobs.scenario("windy-hill"));
    Piece between = crossbeam(pieces, 4);
    assertThat(between.count()).isEqualTo(4);
    assertThat(between.shape().recesses())
        .allSatisfy(each -> assertThat(each.widthIn()).isEqualTo(1.625));
  }

  @Test
  void over_headers_on_top_of_their_posts_all_crossbeams_are_alike() {
    Pieces pieces = Pieces.of(Jobs.scenario("bean-row"));
    assertThat(pieces.of("crossbeam")).hasSize(1);
    assertThat(pieces.overPosts()).isEmpty();
  }

  private static Piece crossbeam(Pieces pieces, int notches) {
    return pieces.of("crossbeam").stream()
        .filter(each -> each.shape().recesses().size() == notches)
        .findFirst()
        .orElseThrow();
  }
}

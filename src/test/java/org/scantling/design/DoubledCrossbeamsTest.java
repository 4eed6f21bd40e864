package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Two bays of 48 in, crossbeams 1 1/2 in broad every 12 in, two at each of three pairs of posts.
 */
class DoubledCrossbeamsTest {
  private static Geometry geometry(int perBay, boolean doubled) {
    return new Geometry(
        new Geometry.Plan(60, 48, 2),
        new Geometry.Posts(5.5, 90),
        new Geometry.Headers(false, 3.5, 5.5, 6, 0.5),
        new Geometry.Crossbeams(perBay, 1.5, 5.5, 10, 0.5, 1.5, false, doubled));
  }

  @Test
  void there_is_one_timber_more_at_each_pair_of_posts_and_as_many_places() {
    assertThat(geometry(4, true).crossbeamCount()).isEqualTo(geometry(4, false).crossbeamCount());
    assertThat(geometry(4, false).crossbeamPieceCount()).isEqualTo(9);
    assertThat(geometry(4, true).crossbeamPieceCount()).isEqualTo(12);
  }

  /** 4 x 12 in of bay hold five timbers of 1 1/2 in: 1.875 in over each spacing. */
  @Test
  void their_breadth_is_shared_by_the_spacings_of_a_bay() {
    assertThat(geometry(4, true).breadthPerSpacingIn()).isCloseTo(1.875, within(1e-9));
    assertThat(geometry(4, false).breadthPerSpacingIn()).isEqualTo(1.5);
  }

  /** 12 - (3 + 1 1/2)/2 beside a pair; 48 - 3 where nothing lies between pairs. */
  @Test
  void the_gap_beside_two_is_the_narrowest() {
    assertThat(geometry(4, true).narrowestGapIn()).isCloseTo(9.75, within(1e-9));
    assertThat(geometry(4, false).narrowestGapIn()).isCloseTo(10.5, within(1e-9));
    assertThat(geometry(1, true).narrowestGapIn()).isCloseTo(45, within(1e-9));
  }
}

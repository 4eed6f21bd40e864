package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry.Crossbeams;
import org.scantling.design.Geometry.Headers;
import org.scantling.design.Geometry.Plan;
import org.scantling.design.Geometry.Posts;

class GeometryTest {
  private static final double TO_A_SIXTEENTH = 1.0 / 32;

  private final Geometry small =
      new Geometry(
          new Plan(68, 42, 1),
          new Posts(3.5, 90),
          new Headers(false, 3.5, 3.5, 13.25, 0.5),
          new Crossbeams(4, 1.5, 3.5, 12.25, 0.5, 1.5));

  @Test
  void corner_to_corner_of_a_small_bay() {
    // Common practice, no source: 68 by 42 in centre to centre measures 80 in (79.9) across the
    // corners.
    assertThat(small.bayDiagonalIn()).isCloseTo(79.9, within(0.05));
  }

  @Test
  void posts_take_their_breadth_off_the_row_spacing() {
    // Common practice, no source: with 4x4 posts 68 in apart the rows leave 64 1/2 in clear.
    assertThat(small.clearWidthIn()).isCloseTo(64.5, within(TO_A_SIXTEENTH));
  }

  @Test
  void a_six_foot_header_carries_seven_eight_foot_crossbeams() {
    assertThat(small.headerLengthIn()).isCloseTo(72, within(TO_A_SIXTEENTH));
    assertThat(small.crossbeamLengthIn()).isCloseTo(96, within(TO_A_SIXTEENTH));
    assertThat(small.crossbeamCount()).isEqualTo(7);
    assertThat(small.crossbeamsAtIn()).containsExactly(-10.5, 0.0, 10.5, 21.0, 31.5, 42.0, 52.5);
  }

  /**
   * Six bays of 52.5 in, tails of 12 in past a 6x6: 2.75 + 12 in from the last post to the tip. One
   * more crossbeam a space of 13.125 in on has its middle 1.625 in from the tip: clear of the
   * margin of 1.5 in, but the face of a 4x6 would stand 1.75 - 1.625 = 0.125 in past the header.
   */
  @Test
  void a_thick_crossbeam_lies_on_the_header_with_its_whole_breadth() {
    assertThat(ofSixBays(1.5).crossbeamCount()).isEqualTo(27);
    Geometry thick = ofSixBays(3.5);
    assertThat(thick.crossbeamCount()).isEqualTo(25);
    double tipIn = -thick.headerTailIn();
    assertThat(thick.crossbeamsAtIn().get(0) - 3.5 / 2).isGreaterThanOrEqualTo(tipIn);
  }

  private static Geometry ofSixBays(double crossbeamBreadthIn) {
    return new Geometry(
        new Plan(74, 52.5, 6),
        new Posts(5.5, 91),
        new Headers(false, 5.5, 5.5, 12, 0),
        new Crossbeams(4, crossbeamBreadthIn, 5.5, 8.25, 0.375, 1.5));
  }

  @Test
  void headroom_loses_both_notches_and_gains_the_header() {
    assertThat(small.headerTopIn()).isCloseTo(93, within(TO_A_SIXTEENTH));
    assertThat(small.headroomIn()).isCloseTo(92.5, within(TO_A_SIXTEENTH));
    assertThat(small.crossbeamUndersideIn()).isCloseTo(92.5, within(TO_A_SIXTEENTH));
    assertThat(small.overallHeightIn()).isCloseTo(96, within(TO_A_SIXTEENTH));
  }

  @Test
  void paired_headers_are_flush_with_the_post_tops_and_widen_the_seat() {
    Geometry paired =
        new Geometry(
            new Plan(96, 60, 3),
            new Posts(5.5, 96),
            new Headers(true, 1.5, 7.25, 12, 0),
            new Crossbeams(4, 1.5, 5.5, 14, 0.75, 1.5));
    assertThat(paired.headerTopIn()).isCloseTo(96, within(TO_A_SIXTEENTH));
    assertThat(paired.seatBreadthIn()).isCloseTo(8.5, within(TO_A_SIXTEENTH));
    assertThat(paired.postCount()).isEqualTo(8);
    // The inner board hangs 7 1/4 in from the post tops into the way, lower than any crossbeam.
    assertThat(paired.crossbeamUndersideIn()).isCloseTo(95.25, within(TO_A_SIXTEENTH));
    assertThat(paired.headroomIn()).isCloseTo(88.75, within(TO_A_SIXTEENTH));
    assertThat(paired.overallHeightIn()).isCloseTo(100.75, within(TO_A_SIXTEENTH));
  }
}

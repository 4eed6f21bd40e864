package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class KneeBracesTest {
  private static final double BRACE_IN = 3.5;
  private static final double FEET_APART_IN = 5.12;

  /** Posts 8x8 some 30 in apart between paired 2x10, under crossbeams let in by half an inch. */
  private static KneeBraces braces(String kind, double slopeRatio, int bays, double legIn) {
    Geometry geometry =
        new Geometry(
            new Geometry.Plan(67.5, 30.14, bays),
            new Geometry.Posts(7.5, 112.25),
            new Geometry.Headers(true, 1.5, 9.25, 10, 0),
            new Geometry.Crossbeams(2, 3.5, 9.25, 9, 0.5, 1.5));
    TopLine top = new TopLine(geometry, kind, slopeRatio, -1);
    return new KneeBraces(top, legIn, BRACE_IN, FEET_APART_IN);
  }

  /**
   * By hand: 30.14 less half a post (3.75) and the brace across (3.5) leaves 22.89 in. An inner
   * brace reaches its leg, 9.25 / 2 - 0.5 = 4.125 to the underside of the crossbeams, and half its
   * depth over sqrt 1/2, 2.475, for its corner: 16.29 in of leg, of which 5.12 is the lower foot.
   */
  @Test
  void a_brace_along_the_walk_stops_short_of_the_one_across_it_at_the_next_post() {
    assertThat(braces("level", 0, 7, 12).longestLegIn(BRACE_IN)).isCloseTo(11.17, within(0.005));
  }

  /** The only inner brace is then that of an end post, which has no other above its foot. */
  @Test
  void in_a_single_bay_no_foot_lies_lower() {
    assertThat(braces("level", 0, 1, 12).longestLegIn(BRACE_IN)).isCloseTo(16.29, within(0.005));
  }

  @Test
  void with_the_longest_leg_the_farthest_corner_just_meets_the_face_of_the_brace_across() {
    for (String kind : new String[] {"level", "follows-ground", "stepped"}) {
      for (double slopeRatio : new double[] {0.04, -0.04}) {
        double longestIn = braces(kind, slopeRatio, 5, 12).longestLegIn(BRACE_IN);
        KneeBraces longest = braces(kind, slopeRatio, 5, longestIn);
        double reachIn =
            longest.along().stream()
                .filter(each -> !each.outside())
                .mapToDouble(each -> each.legIn() + longest.aboveAlongIn() + 3.5 * Math.sqrt(0.5))
                .max()
                .orElseThrow();
        assertThat(reachIn).as("%s, %s", kind, slopeRatio).isCloseTo(22.89, within(1e-9));
      }
    }
  }
}

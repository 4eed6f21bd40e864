package org.scantling.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The judge's own arithmetic against closed forms and published values. */
class JudgeWorkTest {
  private static final Percentage CLOSE = Percentage.withPercentage(0.5);

  @Test
  void a_simple_span_sags_five_384ths_and_bends_an_eighth() {
    Grid grid = Grid.of(List.of(0.0, 50.0, 100.0), List.of(), 5);
    Beam beam = new Beam(grid.placesIn(), grid.cuts(), grid.near(List.of(0.0, 100.0)));
    double[] share = grid.shareIn();
    int middle = (beam.nodes() - 1) / 2;
    assertThat(Loaded.dot(beam.moment(middle), share)).isCloseTo(100 * 100 / 8.0, CLOSE);
    assertThat(Loaded.dot(beam.sag(middle), share)).isCloseTo(5 * 1e8 / 384, CLOSE);
    assertThat(Loaded.dot(beam.reaction(0), share)).isCloseTo(50, CLOSE);
  }

  @Test
  void two_equal_spans_have_an_eighth_over_the_middle_and_five_quarters_on_it() {
    Grid grid = Grid.of(List.of(0.0, 60.0, 120.0), List.of(), 2);
    Beam beam = new Beam(grid.placesIn(), grid.cuts(), grid.near(List.of(0.0, 60.0, 120.0)));
    double[] share = grid.shareIn();
    int middle = (beam.nodes() - 1) / 2;
    assertThat(Loaded.dot(beam.moment(middle), share)).isCloseTo(-60 * 60 / 8.0, CLOSE);
    assertThat(Loaded.dot(beam.reaction(middle), share)).isCloseTo(1.25 * 60, CLOSE);
  }

  @Test
  void cut_over_the_middle_post_each_span_stands_alone() {
    Grid grid = Grid.of(List.of(-10.0, 0.0, 60.0, 120.0, 130.0), List.of(60.0), 2);
    Beam beam = new Beam(grid.placesIn(), grid.cuts(), grid.near(List.of(0.0, 60.0, 120.0)));
    double[] share = grid.shareIn();
    double middle = 0;
    for (int i = 0; i < beam.nodes(); i++) {
      if (beam.xIn(i) == 60) {
        assertThat(Loaded.dot(beam.moment(i), share)).isCloseTo(0, within(1e-6));
        middle += Loaded.dot(beam.reaction(i), share);
      }
    }
    assertThat(middle)
        .as("w L/2 - w c^2/2L from either side")
        .isCloseTo(2 * (30 - 50 / 60.0), CLOSE);
  }

  /** NDS 2018 Table 12N: 16d common, side 1 1/2 in, G 0.50, 141 lb. */
  @Test
  void a_16d_nail_in_douglas_fir_holds_141_lb() {
    Yield nail = new Yield(0.162, 90000);
    double bearing = nail.bearingPsi(0.5, 0);
    assertThat(nail.single(2, 1.5, bearing, bearing, 0)).isCloseTo(141, CLOSE);
  }

  /** NDS 2018 Table 12A, from memory: 1/2 in bolt, both 1 1/2 in, G 0.50, 480 lb along. */
  /** The equations of TR12 for a gap come to those of NDS 12.3.1 where there is none. */
  @Test
  void a_bolt_over_a_gap_of_nothing_holds_what_one_without_a_gap_holds_and_less_over_more() {
    Yield yield = new Yield(0.625, 45000);
    double main = yield.bearingPsi(0.5, 45);
    double side = yield.bearingPsi(0.5, 0);
    for (double sideIn : List.of(1.5, 3.5)) {
      double close = yield.single(5.5, sideIn, main, side, 45);

      assertThat(yield.apart(5.5, sideIn, main, side, new Yield.Gap(0, 45)))
          .isCloseTo(close, within(1e-6 * close));
      assertThat(yield.apart(5.5, sideIn, main, side, new Yield.Gap(1.5, 45)))
          .isBetween(0.3 * close, 0.8 * close);
    }
  }

  @Test
  void a_half_inch_bolt_between_two_boards_holds_480_lb() {
    Yield bolt = new Yield(0.5, 45000);
    double bearing = bolt.bearingPsi(0.5, 0);
    assertThat(bolt.single(1.5, 1.5, bearing, bearing, 0))
        .isCloseTo(480, Percentage.withPercentage(1));
  }

  /** IBC Equation 18-1 worked by hand: 150 lb at 5 ft on 1 ft in 150 psf/ft needs 4.056 ft. */
  @Test
  void a_pole_needs_the_depth_of_the_equation() {
    assertThat(Pole.depthFt(150, 5, 1, 150)).isCloseTo(4.056, CLOSE);
    assertThat(Pole.depthFt(150, 5, 1, 200)).isCloseTo(3.629, CLOSE);
  }

  /** By hand for 36 in of depth under a push at 48.6 in: pivot 25 in, moment a tenth more. */
  @Test
  void the_greatest_moment_of_a_stiff_pole_lies_a_tenth_over_that_at_the_ground() {
    assertThat(Pole.pivot(36, 48.63)).isCloseTo(24.99, CLOSE);
    assertThat(Pole.momentRatio(36, 48.63)).isCloseTo(1.107, CLOSE);
  }

  /** NDS: southern pine No.2 4x4, wet, 82 in as a flagpole, D + 0.6W, worked by hand. */
  @Test
  void a_slender_post_buckles_at_153_psi() {
    Wood wood = Wood.of("southern-pine", "No.2", Stock.of("4x4"));
    assertThat(wood.bucklingPsi()).isCloseTo(459000, CLOSE);
    assertThat(wood.columnPsi(2.1 * 82, 3.5, 1.6)).isCloseTo(153.1, CLOSE);
  }

  /** Supplement Tables 4A and 4.3.8: incised hem-fir No.2 2x6, wet. */
  @Test
  void incised_wet_hem_fir_is_allowed_884_psi() {
    Wood wood = Wood.of("hem-fir", "No.2", Stock.of("2x6"));
    assertThat(wood.bendingPsi()).isCloseTo(850 * 1.3 * 0.8, CLOSE);
    assertThat(wood.shearPsi()).isCloseTo(150 * 0.97 * 0.8, CLOSE);
  }

  /**
   * A portal on pinned feet with knee braces, as two general finite-element programs have it: 400
   * lb at its top left and 8 lb/in down on its beam move the top 0.336186 in.
   */
  @Test
  void a_portal_with_knee_braces_sways_as_other_programs_say() {
    Frame frame = new Frame();
    double e = 1.6e6;
    int[] foot = {frame.node(0, 0), frame.node(144, 0)};
    int[] knee = {frame.node(0, 72), frame.node(144, 72)};
    int[] beam = new int[49];
    int[] turn = new int[49];
    for (int i = 0; i < beam.length; i++) {
      beam[i] = frame.node(3 * i, 96);
      turn[i] = frame.turn();
      frame.load(beam[i], 0, i == 0 || i == 48 ? -12 : -24);
      if (i > 0) {
        frame.bar(beam[i - 1], beam[i], e * 27.75, e * 197.863, turn[i - 1], turn[i]);
      }
    }
    frame.load(beam[0], 400, 0);
    for (int side = 0; side < 2; side++) {
      frame.pin(foot[side]);
      int top = side == 0 ? 0 : 48;
      int middle = frame.turn();
      frame.bar(foot[side], knee[side], e * 30.25, e * 76.2552, frame.turn(), middle);
      frame.bar(knee[side], beam[top], e * 30.25, e * 76.2552, middle, turn[top]);
      frame.strut(knee[side], beam[side == 0 ? 8 : 40], e * 12.25);
    }
    frame.solveFirstOrder();
    assertThat(frame.alongIn(beam[0])).isCloseTo(0.336186, CLOSE);
    assertThat(frame.alongIn(knee[1])).isCloseTo(0.348443, CLOSE);
  }
}

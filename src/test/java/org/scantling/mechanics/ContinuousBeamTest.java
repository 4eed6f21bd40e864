package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContinuousBeamTest {
  private static final ContinuousBeam HEADER = ContinuousBeam.of(264, 24, 120, 240);

  @Test
  void it_tells_its_shape() {
    assertThat(HEADER.lengthIn()).isEqualTo(264);
    assertThat(HEADER.supportCount()).isEqualTo(3);
    assertThat(HEADER.spanCount()).isEqualTo(2);
    assertThat(HEADER.supportAtIn(1)).isEqualTo(120);
  }

  @Test
  void it_refuses_beams_that_cannot_stand() {
    assertThatThrownBy(() -> ContinuousBeam.of(100, 50))
        .hasMessage("a beam on 1 support(s) can turn over; it must have 2 or more");
    assertThatThrownBy(() -> ContinuousBeam.of(100, 20, 20))
        .hasMessage("support 2 at 20.0 in must stand beyond support 1");
    assertThatThrownBy(() -> ContinuousBeam.of(100, 20, 120))
        .hasMessage("support 2 at 120.0 in must be on the beam, 0 to 100.0 in");
    assertThatThrownBy(() -> ContinuousBeam.of(0, 20, 120))
        .hasMessage("beam length 0.0 in must be above zero and finite");
  }

  @Test
  void it_refuses_loads_off_the_beam() {
    assertThatThrownBy(() -> HEADER.solve(new BeamLoad.Point(265, 1)))
        .hasMessage("point load at 265.0 in must be on the beam, 0 to 264.0 in");
    assertThatThrownBy(() -> HEADER.solve(new BeamLoad.Uniform(-1, 10, 1)))
        .hasMessage("uniform load start at -1.0 in must be on the beam, 0 to 264.0 in");
    assertThatThrownBy(() -> HEADER.solve(new BeamLoad.Uniform(1, 270, 1)))
        .hasMessage("uniform load end at 270.0 in must be on the beam, 0 to 264.0 in");
    assertThatThrownBy(() -> new BeamLoad.Uniform(10, 10, 1))
        .hasMessage("uniform load from 10.0 in to 10.0 in must end beyond its start");
    assertThatThrownBy(() -> new BeamLoad.Point(10, Double.NaN))
        .hasMessage("point load NaN lb must be finite");
    assertThatThrownBy(() -> HEADER.solve().momentInLb(300))
        .hasMessage("place 300.0 in must be on the beam, 0 to 264.0 in");
  }

  @Test
  void rounding_at_the_tips_is_forgiven() {
    double almost = 264 * (1 + 1e-12);
    BeamResult result = HEADER.solve(new BeamLoad.Uniform(0, almost, 8));
    assertThat(result.reactionLb(0) + result.reactionLb(1) + result.reactionLb(2))
        .isCloseTo(8 * 264, within(1e-6));
    assertThat(ContinuousBeam.of(264, 0, almost).supportAtIn(1)).isEqualTo(264);
  }

  @Test
  void no_load_does_nothing() {
    BeamResult result = HEADER.solve();
    assertThat(result.reactionsLb()).containsOnly(0);
    assertThat(result.largestShear().amount()).isZero();
    assertThat(result.largestMoment().amount()).isZero();
    assertThat(result.largestSpanDeflection(1).amount()).isZero();
  }

  @Test
  void shear_jumps_where_a_support_or_a_load_stands() {
    BeamResult result = HEADER.solve(HEADER.everywhere(8), new BeamLoad.Point(0, 100));
    double[] stations = result.stationsIn();
    double[] before = result.shearsBeforeLb();
    double[] after = result.shearsAfterLb();
    double jumps = 0;
    for (int i = 0; i < stations.length; i++) {
      jumps += after[i] - before[i];
    }
    // Upward jumps are reactions, the one downward jump is the point load.
    assertThat(jumps).isCloseTo(8 * 264, within(1e-9));
    assertThat(before[0]).isZero();
    assertThat(after[0]).isCloseTo(-100, within(1e-9));
    assertThat(after[stations.length - 1]).isZero();
  }

  @Test
  void the_arrays_hold_what_the_methods_answer() {
    BeamResult result =
        HEADER.solve(new BeamLoad.Uniform(30, 200, 7), new BeamLoad.Point(250, 100));
    double[] stations = result.stationsIn();
    assertThat(stations).isSorted().contains(0, 24, 30, 120, 200, 240, 250, 264);
    for (int i = 0; i < stations.length; i++) {
      assertThat(result.momentInLb(stations[i])).isCloseTo(result.momentsInLb()[i], within(1e-6));
      assertThat(result.deflectionLbIn3(stations[i]))
          .isCloseTo(result.deflectionsLbIn3()[i], within(1.0));
    }
    assertThat(result.leftTipDeflectionLbIn3()).isEqualTo(result.deflectionsLbIn3()[0]);
    assertThat(result.rightTipDeflectionLbIn3())
        .isEqualTo(result.deflectionsLbIn3()[stations.length - 1]);
  }

  @Test
  void peaks_of_one_span_stay_in_it() {
    BeamResult result = HEADER.solve(HEADER.everywhere(8));
    assertThat(result.mostSagging(1)).isEqualTo(result.mostSagging());
    assertThat(result.mostSagging(0).amount()).isLessThan(result.mostSagging(1).amount());
    assertThat(result.mostSagging(0).atIn()).isBetween(24.0, 120.0);
    assertThat(result.largestShear(0).atIn()).isBetween(24.0, 120.0);
    assertThat(result.largestShear(1)).isEqualTo(result.largestShear());
    assertThat(result.largestMoment()).isEqualTo(result.mostHogging());
  }

  @Test
  void cases_of_different_calls_do_not_combine() {
    BeamResult one = HEADER.solve(HEADER.everywhere(1));
    BeamResult other = HEADER.solve(HEADER.everywhere(1));
    assertThatThrownBy(() -> BeamResult.combine(List.of(one, other), 1, 1))
        .hasMessage("case 2 must come from the same call of solve as the first");
    assertThatThrownBy(() -> BeamResult.combine(List.of(one), 1, 1))
        .hasMessage("1 cases and 2 factors must be as many, 1 or more");
  }

  @Test
  void results_cannot_be_changed_from_outside() {
    BeamResult result = HEADER.solve(HEADER.everywhere(8));
    result.reactionsLb()[0] = 0;
    result.momentsInLb()[3] = 1e9;
    assertThat(result.reactionLb(0)).isPositive();
    assertThat(result.momentsInLb()[3]).isLessThan(1e9);
  }

  @Test
  void a_load_a_hair_beside_a_support_counts_as_on_it() {
    BeamResult result =
        HEADER.solve(
            new BeamLoad.Point(120 + 1e-10, 500), new BeamLoad.Uniform(24, 120 - 1e-10, 1));
    BeamResult plain = HEADER.solve(new BeamLoad.Point(120, 500), new BeamLoad.Uniform(24, 120, 1));
    assertThat(result.stationsIn()).hasSameSizeAs(plain.stationsIn());
    assertThat(result.reactionLb(1)).isCloseTo(plain.reactionLb(1), within(1e-6));
    assertThat(result.largestShear().amount())
        .isCloseTo(plain.largestShear().amount(), within(1e-6));
  }
}

package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.timber.NotchedShear.FastenerPlace;

class NotchTest {
  private static final Rectangle TWO_BY_EIGHT = new Rectangle(1.5, 7.25);
  private static final AdjustedStress SHEAR = Sample.stress(180);

  @Test
  void a_notch_in_the_tension_face_costs_the_square_of_the_depth_on_top_of_the_area() {
    NotchedShear notched =
        NotchedShear.onTensionFace(-500, TWO_BY_EIGHT, new EndNotch(1.5, 0), SHEAR);
    assertThat(notched.remainingDepthIn()).isEqualTo(5.75);
    assertThat(notched.allowableLb())
        .isCloseTo(2.0 / 3 * 180 * 1.5 * 5.75 * Math.pow(5.75 / 7.25, 2), within(1e-9))
        .isCloseTo(651, within(0.5));
    assertThat(notched.check().demand()).isEqualTo(500);
    assertThat(notched.check().ratio()).isCloseTo(500 / 651.03, within(1e-4));
  }

  @Test
  void without_a_notch_both_faces_give_the_plain_shear_strength() {
    EndNotch none = new EndNotch(0, 3);
    double plainLb = 2.0 / 3 * 180 * 1.5 * 7.25;
    assertThat(NotchedShear.onTensionFace(1, TWO_BY_EIGHT, none, SHEAR).allowableLb())
        .isCloseTo(plainLb, within(1e-9));
    assertThat(NotchedShear.onCompressionFace(1, TWO_BY_EIGHT, none, SHEAR).allowableLb())
        .isCloseTo(plainLb, within(1e-9));
    assertThat(1 / Shear.of(1, TWO_BY_EIGHT, SHEAR).check().ratio())
        .isCloseTo(plainLb, within(1e-9));
  }

  @Test
  void a_notch_in_the_compression_face_costs_little_while_it_is_short() {
    double shortLb = compression(2);
    assertThat(shortLb)
        .isCloseTo(2.0 / 3 * 180 * 1.5 * (7.25 - 1.5 / 5.75 * 2), within(1e-9))
        .isCloseTo(1211, within(0.5));
    assertThat(compression(0)).isCloseTo(2.0 / 3 * 180 * 1.5 * 7.25, within(1e-9));
  }

  @Test
  void past_the_depth_left_a_longer_compression_notch_costs_no_more() {
    double depthLeftLb = 2.0 / 3 * 180 * 1.5 * 5.75;
    assertThat(compression(5.75)).isCloseTo(depthLeftLb, within(1e-9));
    assertThat(compression(20)).isCloseTo(depthLeftLb, within(1e-9));
  }

  private static double compression(double reachIn) {
    EndNotch notch = new EndNotch(1.5, reachIn);
    return NotchedShear.onCompressionFace(500, TWO_BY_EIGHT, notch, SHEAR).allowableLb();
  }

  @Test
  void fasteners_near_an_end_split_the_beam_like_a_notch_and_farther_in_do_not() {
    double plainLb = 2.0 / 3 * 180 * 1.5 * 5.25;
    double squared = Math.pow(5.25 / 7.25, 2);
    assertThat(atFasteners(4))
        .isCloseTo(plainLb * squared, within(1e-9))
        .isCloseTo(495.5, within(0.1));
    assertThat(atFasteners(36.24)).isCloseTo(plainLb * squared, within(1e-9));
    assertThat(atFasteners(36.25)).isCloseTo(plainLb, within(1e-9));
  }

  private static double atFasteners(double toEndIn) {
    FastenerPlace place = new FastenerPlace(2, toEndIn);
    return NotchedShear.atFasteners(500, TWO_BY_EIGHT, place, SHEAR).allowableLb();
  }

  @Test
  void notched_shear_refuses_what_leaves_nothing() {
    assertThatThrownBy(
            () -> NotchedShear.onTensionFace(1, TWO_BY_EIGHT, new EndNotch(7.25, 0), SHEAR))
        .hasMessage("notch depth 7.25 in must be below 7.25");
    assertThatThrownBy(() -> new EndNotch(-1, 0))
        .hasMessage("notch depth -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> new EndNotch(1, -2))
        .hasMessage("reach of the notch -2.0 in must be zero or more and finite");
    assertThatThrownBy(() -> new FastenerPlace(-1, 0))
        .hasMessage("distance to the unloaded edge -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> new FastenerPlace(1, -1))
        .hasMessage("distance to the end -1.0 in must be zero or more and finite");
    assertThatThrownBy(
            () -> NotchedShear.onTensionFace(Double.NaN, TWO_BY_EIGHT, new EndNotch(1, 0), SHEAR))
        .hasMessage("shear force NaN lb must be finite");
  }
}

package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.timber.NotchLimits.Limit;
import org.scantling.timber.NotchedShear.FastenerPlace;

class NotchTest {
  private static final Rectangle TWO_BY_EIGHT = new Rectangle(1.5, 7.25);
  private static final AdjustedStress SHEAR = Sample.stress(180);
  private static final NotchLimits LIMITS = new NotchLimits(0.25, 1.0 / 6, 1.0 / 3, 4);

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

  @Test
  void a_notch_is_at_the_end_in_an_outer_third_or_in_the_middle_third() {
    assertThat(NotchPlace.along(0, 3.5, 90)).isEqualTo(NotchPlace.END);
    assertThat(NotchPlace.along(86.5, 90, 90)).isEqualTo(NotchPlace.END);
    assertThat(NotchPlace.along(4, 7.5, 90)).isEqualTo(NotchPlace.OUTER_THIRD);
    assertThat(NotchPlace.along(28, 31.5, 90)).isEqualTo(NotchPlace.MIDDLE_THIRD);
    assertThat(NotchPlace.along(26.5, 30, 90)).isEqualTo(NotchPlace.OUTER_THIRD);
    assertThat(NotchPlace.along(60, 63.5, 90)).isEqualTo(NotchPlace.OUTER_THIRD);
    assertThat(NotchPlace.along(59.9, 63.5, 90)).isEqualTo(NotchPlace.MIDDLE_THIRD);
    assertThatThrownBy(() -> NotchPlace.along(10, 5, 90))
        .hasMessage("other side of the notch 5.0 in must be from 10.0 to 90.0");
  }

  @Test
  void an_end_notch_may_take_a_quarter_of_the_depth() {
    Notch quarter = new Notch(NotchPlace.END, true, 1.375, 9);
    assertThat(LIMITS.review(quarter, 5.5, 4).allowed()).isTrue();
    Notch more = new Notch(NotchPlace.END, true, 1.376, 9);
    assertThat(LIMITS.review(more, 5.5, 4).broken())
        .containsExactly(new NotchLimits.Finding(Limit.END_DEPTH, 1.376, 1.375));
  }

  @Test
  void a_notch_in_an_outer_third_may_be_a_sixth_deep_and_a_third_long() {
    double depthIn = 6;
    Notch kept = new Notch(NotchPlace.OUTER_THIRD, true, 1, 2);
    assertThat(LIMITS.review(kept, depthIn, 2).allowed()).isTrue();
    assertThat(LIMITS.review(kept, depthIn, 2).findings()).hasSize(2);
    Notch both = new Notch(NotchPlace.OUTER_THIRD, false, 1.1, 2.1);
    assertThat(LIMITS.review(both, depthIn, 2).broken())
        .extracting(NotchLimits.Finding::limit)
        .containsExactly(Limit.INNER_DEPTH, Limit.INNER_LENGTH);
  }

  @Test
  void one_inch_out_of_a_two_by_six_is_too_deep_inside_and_not_at_its_end() {
    Notch inside = new Notch(NotchPlace.OUTER_THIRD, true, 1, 1.5);
    assertThat(LIMITS.review(inside, 5.5, 2).allowed()).isFalse();
    Notch atEnd = new Notch(NotchPlace.END, true, 1, 1.5);
    assertThat(LIMITS.review(atEnd, 5.5, 2).allowed()).isTrue();
  }

  @Test
  void the_middle_third_takes_no_notch_at_all() {
    Notch shallow = new Notch(NotchPlace.MIDDLE_THIRD, false, 0.01, 0.1);
    assertThat(LIMITS.review(shallow, 5.5, 2).broken())
        .containsExactly(new NotchLimits.Finding(Limit.MIDDLE_THIRD, 0.01, 0));
  }

  @Test
  void a_member_four_inches_thick_by_name_takes_none_in_its_tension_edge_but_at_its_ends() {
    Notch tension = new Notch(NotchPlace.OUTER_THIRD, true, 0.5, 1);
    assertThat(LIMITS.review(tension, 5.5, 4).broken())
        .extracting(NotchLimits.Finding::limit)
        .containsExactly(Limit.THICK_TENSION_EDGE);
    assertThat(LIMITS.review(tension, 5.5, 3).allowed()).isTrue();
    Notch compression = new Notch(NotchPlace.OUTER_THIRD, false, 0.5, 1);
    assertThat(LIMITS.review(compression, 5.5, 4).allowed()).isTrue();
  }

  @Test
  void notch_limits_refuse_what_is_no_notch_and_no_limit() {
    assertThatThrownBy(() -> new Notch(NotchPlace.END, true, 0, 1))
        .hasMessage("notch depth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Notch(NotchPlace.END, true, 1, -1))
        .hasMessage("notch length -1.0 in must be above zero and finite");
    assertThatThrownBy(() -> new NotchLimits(0, 1, 1, 4))
        .hasMessage("end notch depth ratio 0.0 must be above zero and finite");
    Notch notch = new Notch(NotchPlace.END, true, 1, 1);
    assertThatThrownBy(() -> LIMITS.review(notch, 0, 2))
        .hasMessage("depth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> LIMITS.review(notch, 5.5, 0))
        .hasMessage("nominal thickness 0.0 in must be above zero and finite");
  }
}

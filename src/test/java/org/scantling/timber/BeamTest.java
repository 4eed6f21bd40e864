package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BeamTest {
  private static final Rectangle TWO_BY_EIGHT = new Rectangle(1.5, 7.25);

  @Test
  void a_section_knows_its_area_modulus_and_second_moment() {
    assertThat(Sample.TWO_BY_SIX.areaIn2()).isEqualTo(8.25);
    assertThat(Sample.TWO_BY_SIX.sectionModulusIn3()).isCloseTo(7.5625, within(1e-12));
    assertThat(Sample.TWO_BY_SIX.secondMomentIn4()).isCloseTo(20.80, within(0.005));
    assertThat(Sample.TWO_BY_SIX.turned()).isEqualTo(new Rectangle(5.5, 1.5));
    assertThat(Sample.TWO_BY_SIX.notched(0.5)).isEqualTo(new Rectangle(1.5, 5));
  }

  @Test
  void a_section_refuses_what_cannot_be_sawn() {
    assertThatThrownBy(() -> new Rectangle(0, 5.5))
        .hasMessage("breadth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Rectangle(1.5, Double.POSITIVE_INFINITY))
        .hasMessage("depth Infinity in must be above zero and finite");
    assertThatThrownBy(() -> Sample.TWO_BY_SIX.notched(5.5))
        .hasMessage("notch depth 5.5 in must be below 5.5");
    assertThatThrownBy(() -> Sample.TWO_BY_SIX.notched(-1))
        .hasMessage("notch depth -1.0 in must be zero or more and finite");
  }

  @Test
  void effective_length_follows_the_table_on_both_sides_of_seven_depths() {
    assertThat(BeamLoading.UNIFORM.effectiveLengthIn(240, 30)).isCloseTo(481.2, within(1e-9));
    assertThat(BeamLoading.UNIFORM.effectiveLengthIn(60, 10)).isCloseTo(123.6, within(1e-9));
    assertThat(BeamLoading.UNIFORM.effectiveLengthIn(70, 10)).isCloseTo(144.1, within(1e-9));
    assertThat(BeamLoading.MIDSPAN_POINT.effectiveLengthIn(60, 10)).isCloseTo(108, within(1e-9));
    assertThat(BeamLoading.MIDSPAN_POINT.effectiveLengthIn(100, 10)).isCloseTo(167, within(1e-9));
    assertThat(BeamLoading.CANTILEVER_UNIFORM.effectiveLengthIn(10, 10))
        .isCloseTo(13.3, within(1e-9));
    assertThat(BeamLoading.CANTILEVER_UNIFORM.effectiveLengthIn(100, 10))
        .isCloseTo(120, within(1e-9));
    assertThat(BeamLoading.CANTILEVER_TIP_POINT.effectiveLengthIn(10, 10))
        .isCloseTo(18.7, within(1e-9));
    assertThat(BeamLoading.CANTILEVER_TIP_POINT.effectiveLengthIn(100, 10))
        .isCloseTo(174, within(1e-9));
    assertThat(BeamLoading.END_MOMENTS.effectiveLengthIn(100, 10)).isCloseTo(184, within(1e-9));
    assertThat(BeamLoading.OTHER.effectiveLengthIn(60, 10)).isCloseTo(123.6, within(1e-9));
    assertThat(BeamLoading.OTHER.effectiveLengthIn(143, 10)).isCloseTo(263.09, within(1e-9));
    assertThat(BeamLoading.OTHER.effectiveLengthIn(150, 10)).isCloseTo(276, within(1e-9));
    assertThat(BeamLoading.UNIFORM.effectiveLengthIn(150, 10)).isCloseTo(274.5, within(1e-9));
    assertThat(BeamLoading.UNIFORM.effectiveLengthIn(0, 10)).isZero();
    assertThatThrownBy(() -> BeamLoading.UNIFORM.effectiveLengthIn(-1, 10))
        .hasMessage("unbraced length -1.0 in must be zero or more and finite");
  }

  @Test
  void the_stability_factor_shows_its_working() {
    BeamStability stability = BeamStability.of(TWO_BY_EIGHT, 200, Sample.plain());
    double slenderness = Math.sqrt(200 * 7.25 / 2.25);
    assertThat(stability.slendernessRatio()).isCloseTo(slenderness, within(1e-9));
    assertThat(stability.criticalStressPsi())
        .isCloseTo(1.2 * 580_000 / (slenderness * slenderness), within(1e-6));
    assertThat(stability.startStressPsi()).isEqualTo(900);
    double ratio = stability.criticalStressPsi() / 900;
    double mean = (1 + ratio) / 1.9;
    assertThat(stability.stabilityFactor())
        .isCloseTo(mean - Math.sqrt(mean * mean - ratio / 0.95), within(1e-12));
    assertThat(stability.asFactor()).isEqualTo(new Factor("C_L", stability.stabilityFactor()));
  }

  @Test
  void a_beam_no_deeper_than_broad_or_held_all_along_keeps_its_whole_strength() {
    assertThat(BeamStability.of(Sample.FOUR_BY_FOUR, 500, Sample.plain()).stabilityFactor())
        .isEqualTo(1);
    BeamStability held = BeamStability.of(TWO_BY_EIGHT, 0, Sample.plain());
    assertThat(held.stabilityFactor()).isEqualTo(1);
    assertThat(held.criticalStressPsi()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(BeamStability.of(TWO_BY_EIGHT, 1e-6, Sample.plain()).stabilityFactor())
        .isCloseTo(1, within(1e-6));
  }

  @Test
  void beam_slenderness_of_fifty_passes_and_more_does_not() {
    double breadthIn = 1.5;
    double depthIn = 7.5;
    double lengthAtFiftyIn = 2500 * breadthIn * breadthIn / depthIn;
    Rectangle section = new Rectangle(breadthIn, depthIn);
    assertThat(BeamStability.of(section, lengthAtFiftyIn, Sample.plain()).check().passes())
        .isTrue();
    assertThat(BeamStability.of(section, lengthAtFiftyIn + 0.01, Sample.plain()).check().passes())
        .isFalse();
  }

  @Test
  void bending_divides_the_moment_by_the_section_modulus_whatever_its_sign() {
    Bending sagging = Bending.of(6000, Sample.TWO_BY_SIX, Sample.stress(900));
    assertThat(sagging.stressPsi()).isCloseTo(793.39, within(0.005));
    assertThat(sagging.check().ratio()).isCloseTo(793.39 / 900, within(1e-5));
    assertThat(Bending.of(-6000, Sample.TWO_BY_SIX, Sample.stress(900))).isEqualTo(sagging);
  }

  @Test
  void bending_is_limited_by_the_value_with_its_stability_factor() {
    BeamStability stability = BeamStability.of(TWO_BY_EIGHT, 200, Sample.plain());
    Bending bending = Bending.of(6000, TWO_BY_EIGHT, Sample.plain(), stability);
    assertThat(bending.allowable().psi())
        .isCloseTo(900 * stability.stabilityFactor(), within(1e-9));
    assertThat(bending.allowable().factors()).endsWith(stability.asFactor());
  }

  @Test
  void a_notch_raises_the_bending_stress_by_the_square_of_the_depth_lost() {
    double whole = Bending.of(6000, Sample.TWO_BY_SIX, Sample.stress(900)).stressPsi();
    Rectangle net = Sample.TWO_BY_SIX.notched(1);
    assertThat(Bending.of(6000, net, Sample.stress(900)).stressPsi())
        .isCloseTo(whole * (5.5 / 4.5) * (5.5 / 4.5), within(1e-9));
  }

  @Test
  void shear_is_one_and_a_half_times_the_mean() {
    Shear shear = Shear.of(-500, Sample.TWO_BY_SIX, Sample.stress(180));
    assertThat(shear.shearLb()).isEqualTo(500);
    assertThat(shear.stressPsi()).isCloseTo(90.909, within(0.0005));
    assertThat(shear.check().ratio()).isCloseTo(90.909 / 180, within(1e-5));
  }

  @Test
  void an_even_load_within_one_depth_of_the_support_can_be_left_out() {
    assertThat(Shear.oneDepthAwayLb(500, 10, 5.5)).isCloseTo(445, within(1e-9));
    assertThat(Shear.oneDepthAwayLb(10, 10, 5.5)).isZero();
    assertThatThrownBy(() -> Shear.oneDepthAwayLb(-1, 10, 5.5))
        .hasMessage("shear at the support -1.0 lb must be zero or more and finite");
  }

  @Test
  void a_beam_refuses_what_is_no_force() {
    assertThatThrownBy(() -> Bending.of(Double.NaN, Sample.TWO_BY_SIX, Sample.stress(900)))
        .hasMessage("bending moment NaN in·lb must be finite");
    assertThatThrownBy(() -> Shear.of(Double.NaN, Sample.TWO_BY_SIX, Sample.stress(180)))
        .hasMessage("shear force NaN lb must be finite");
    assertThatThrownBy(() -> BeamStability.of(Sample.TWO_BY_SIX, -1, Sample.plain()))
        .hasMessage("effective length -1.0 in must be zero or more and finite");
  }

  @Test
  void sag_in_time_counts_the_permanent_part_by_its_creep() {
    Deflection sag = new Deflection(0.2, 0.1, 2);
    assertThat(sag.totalIn()).isCloseTo(0.5, within(1e-12));
    assertThat(sag.check(90, 180).ratio()).isCloseTo(1, within(1e-12));
    assertThat(sag.check(90, 180).passes()).isTrue();
    assertThat(sag.checkOverhang(45, 180).ratio()).isCloseTo(1, within(1e-12));
    assertThat(sag.checkOverhang(44, 180).passes()).isFalse();
  }

  @Test
  void sag_refuses_negative_parts_and_creep_that_shrinks() {
    assertThatThrownBy(() -> new Deflection(-0.1, 0, 2))
        .hasMessage("permanent sag -0.1 in must be zero or more and finite");
    assertThatThrownBy(() -> new Deflection(0, -0.1, 2))
        .hasMessage("passing sag -0.1 in must be zero or more and finite");
    assertThatThrownBy(() -> new Deflection(0, 0, 0.9))
        .hasMessage("creep factor 0.9 must be from 1.0 to 10.0");
    assertThatThrownBy(() -> new Deflection(0, 0, 1).check(0, 180))
        .hasMessage("span 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Deflection(0, 0, 1).check(90, 0))
        .hasMessage("span divisor 0.0 must be above zero and finite");
  }
}

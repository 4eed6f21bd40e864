package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.timber.Column.Bracing;

class CombinedStressTest {
  private static final Rectangle SECTION = new Rectangle(3.5, 5.5);
  private static final AdjustedValues VALUES = Sample.plain();
  private static final BeamStability STABILITY = BeamStability.of(SECTION, 120, VALUES);

  private static Column column(double forceLb) {
    return Column.of(forceLb, SECTION, new Bracing(90, 60, 0.8), VALUES);
  }

  private static BentAxis edgewise(double momentInLb, double eccentricityIn) {
    Bending bending = Bending.of(momentInLb, SECTION, VALUES, STABILITY);
    return new BentAxis(bending, SECTION.depthIn(), eccentricityIn);
  }

  private static BentAxis flatwise(double momentInLb, double eccentricityIn) {
    Bending bending = Bending.of(momentInLb, SECTION.turned(), VALUES.bending());
    return new BentAxis(bending, SECTION.breadthIn(), eccentricityIn);
  }

  @Test
  void the_plain_form_sums_load_and_both_bendings() {
    Column column = column(4000);
    CombinedStress sum = CombinedStress.of(column, edgewise(5000, 0), flatwise(2000, 0), STABILITY);
    // NDS 2018 3.9.2, written out
    double fc = 4000 / 19.25;
    double fb1 = 5000 / (3.5 * 5.5 * 5.5 / 6);
    double fb2 = 2000 / (5.5 * 3.5 * 3.5 / 6);
    double critical1 = 0.822 * 580_000 / Math.pow(90 / 5.5, 2);
    double critical2 = 0.822 * 580_000 / Math.pow(60 / 3.5, 2);
    double rolling = fb1 / (1.2 * 580_000 * 3.5 * 3.5 / (120 * 5.5));
    double term1 = fb1 / (900 * STABILITY.stabilityFactor() * (1 - fc / critical1));
    double term2 = fb2 / (900 * (1 - fc / critical2 - rolling * rolling));
    double axial = Math.pow(fc / column.allowable().psi(), 2);
    assertThat(sum.axialTerm()).isCloseTo(axial, within(1e-12));
    assertThat(sum.edgewiseTerm()).isCloseTo(term1, within(1e-12));
    assertThat(sum.flatwiseTerm()).isCloseTo(term2, within(1e-12));
    assertThat(sum.interactionRatio()).isCloseTo(axial + term1 + term2, within(1e-12));
    assertThat(sum.check().ratio()).isCloseTo(axial + term1 + term2, within(1e-12));
    assertThat(sum.bucklesFirst()).isFalse();
  }

  @Test
  void an_offset_load_bends_the_post_by_itself() {
    double eccentricityIn = 5.5 / 6;
    CombinedStress sum =
        CombinedStress.of(column(4000), edgewise(0, eccentricityIn), flatwise(0, 0), STABILITY);
    // NDS 2018 15.4, no side load: 6e/d is 1 here
    double fc = 4000 / 19.25;
    double share = fc / (0.822 * 580_000 / Math.pow(90 / 5.5, 2));
    double term = fc * (1 + 0.234 * share) / (900 * STABILITY.stabilityFactor() * (1 - share));
    assertThat(sum.edgewiseTerm()).isCloseTo(term, within(1e-12));
    assertThat(sum.flatwiseTerm()).isZero();
  }

  @Test
  void an_offset_across_the_breadth_counts_rolling_as_well() {
    CombinedStress sum =
        CombinedStress.of(column(4000), edgewise(5000, 0), flatwise(0, 3.5 / 6), STABILITY);
    double fc = 4000 / 19.25;
    double share = fc / (0.822 * 580_000 / Math.pow(60 / 3.5, 2));
    double rolling = 5000 / (3.5 * 5.5 * 5.5 / 6) / (1.2 * 580_000 * 3.5 * 3.5 / (120 * 5.5));
    double grown = share + rolling * rolling;
    assertThat(sum.flatwiseTerm())
        .isCloseTo(fc * (1 + 0.234 * grown) / (900 * (1 - grown)), within(1e-12));
  }

  @Test
  void a_load_off_centre_along_the_depth_rolls_a_bent_post_further() {
    CombinedStress sum =
        CombinedStress.of(column(4000), edgewise(5000, 5.5 / 6), flatwise(2000, 0), STABILITY);
    double fc = 4000 / 19.25;
    double edge = 5000 / (3.5 * 5.5 * 5.5 / 6) + fc;
    double rolling = edge / (1.2 * 580_000 * 3.5 * 3.5 / (120 * 5.5));
    double share = fc / (0.822 * 580_000 / Math.pow(60 / 3.5, 2));
    assertThat(sum.flatwiseReserve()).isCloseTo(1 - share - rolling * rolling, within(1e-12));
  }

  @Test
  void without_bending_only_the_square_of_the_column_ratio_is_left() {
    Column column = column(4000);
    CombinedStress sum = CombinedStress.of(column, edgewise(0, 0), flatwise(0, 0), STABILITY);
    assertThat(sum.interactionRatio())
        .isCloseTo(column.check().ratio() * column.check().ratio(), within(1e-12));
  }

  @Test
  void a_post_pressed_to_its_buckling_load_fails_whatever_the_bending() {
    Column overloaded = column(100_000);
    assertThat(overloaded.stressPsi()).isGreaterThan(overloaded.aboutBreadth().criticalStressPsi());
    CombinedStress sum = CombinedStress.of(overloaded, edgewise(0, 0), flatwise(0, 0), STABILITY);
    assertThat(sum.bucklesFirst()).isTrue();
    assertThat(sum.check().ratio()).isEqualTo(CombinedStress.BEYOND_BUCKLING);
    assertThat(sum.check().passes()).isFalse();
  }

  @Test
  void a_post_bent_past_rolling_over_fails() {
    double rollingMomentInLb = STABILITY.criticalStressPsi() * SECTION.sectionModulusIn3() * 1.01;
    CombinedStress sum =
        CombinedStress.of(column(0), edgewise(rollingMomentInLb, 0), flatwise(0, 0), STABILITY);
    assertThat(sum.bucklesFirst()).isTrue();
    assertThat(sum.flatwiseReserve()).isNegative();
  }

  @Test
  void a_pull_helps_the_pressed_edge_and_hurts_the_stretched_one() {
    AdjustedStress bent = new AdjustedStress("Fb", 1000, java.util.List.of(new Factor("C_L", 0.5)));
    AxialStress pull = AxialStress.of(200, 1, Sample.stress(600));
    BendingWithTension both = BendingWithTension.of(pull, new Bending(500, SECTION, 1, 500, bent));
    assertThat(both.tensionEdgeRatio()).isCloseTo(0.8333, within(0.00005));
    assertThat(both.compressionEdgeRatio()).isCloseTo(0.6, within(1e-12));
    assertThat(both.check().ratio()).isCloseTo(0.8333, within(0.00005));
    BendingWithTension pulled =
        BendingWithTension.of(pull, new Bending(100, SECTION, 1, 100, bent));
    assertThat(pulled.compressionEdgeRatio()).isZero();
  }

  @Test
  void a_rolling_beam_under_a_small_pull_is_governed_by_its_pressed_edge() {
    AdjustedStress bent = new AdjustedStress("Fb", 1000, java.util.List.of(new Factor("C_L", 0.5)));
    AxialStress pull = AxialStress.of(10, 1, Sample.stress(600));
    assertThat(BendingWithTension.of(pull, new Bending(400, SECTION, 1, 400, bent)).check().ratio())
        .isCloseTo(0.78, within(1e-12));
  }

  @Test
  void an_axis_refuses_a_negative_offset() {
    Bending bending = Bending.of(1, SECTION, Sample.stress(900));
    assertThatThrownBy(() -> new BentAxis(bending, 5.5, -0.1))
        .hasMessage("eccentricity -0.1 in must be zero or more and finite");
    assertThatThrownBy(() -> new BentAxis(bending, 0, 0))
        .hasMessage("depth 0.0 in must be above zero and finite");
  }
}

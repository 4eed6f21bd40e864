package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.scantling.timber.Column.Bracing;

class MemberPropertyTest {
  private static final double LAST_BITS = 1e-12;

  @Property
  void a_column_factor_is_above_zero_and_not_above_one_and_never_grows_with_length(
      @ForAll @DoubleRange(min = 1, max = 400) double lengthIn,
      @ForAll @DoubleRange(min = 0, max = 400) double moreIn,
      @ForAll @DoubleRange(min = 200, max = 4000) double compressionPsi) {
    AdjustedValues values = Sample.column(compressionPsi, 400_000);
    double near = ColumnStability.of(lengthIn, 3.5, values, 0.8).stabilityFactor();
    double far = ColumnStability.of(lengthIn + moreIn, 3.5, values, 0.8).stabilityFactor();
    assertThat(near).isPositive().isLessThanOrEqualTo(1);
    assertThat(far).isPositive().isLessThanOrEqualTo(near + LAST_BITS);
  }

  @Property
  void a_column_never_carries_more_than_its_buckling_load(
      @ForAll @DoubleRange(min = 1, max = 400) double lengthIn) {
    ColumnStability stability = ColumnStability.of(lengthIn, 3.5, Sample.plain(), 0.8);
    assertThat(stability.stabilityFactor() * stability.startStressPsi())
        .isLessThanOrEqualTo(stability.criticalStressPsi());
  }

  @Property
  void a_beam_factor_is_above_zero_and_not_above_one_and_never_grows_with_length(
      @ForAll @DoubleRange(min = 1, max = 600) double lengthIn,
      @ForAll @DoubleRange(min = 0, max = 600) double moreIn,
      @ForAll @DoubleRange(min = 1, max = 16) double depthIn) {
    Rectangle section = new Rectangle(1.5, depthIn);
    double near = BeamStability.of(section, lengthIn, Sample.plain()).stabilityFactor();
    double far = BeamStability.of(section, lengthIn + moreIn, Sample.plain()).stabilityFactor();
    assertThat(near).isPositive().isLessThanOrEqualTo(1);
    assertThat(far).isPositive().isLessThanOrEqualTo(near + LAST_BITS);
  }

  @Property
  void effective_length_grows_with_the_unbraced_length_within_each_branch(
      @ForAll BeamLoading loading,
      @ForAll @DoubleRange(min = 0, max = 6.9) double stocky,
      @ForAll @DoubleRange(min = 7.1, max = 14) double slender) {
    assertThat(loading.effectiveLengthIn(stocky * 10 + 0.5, 10))
        .isGreaterThan(loading.effectiveLengthIn(stocky * 10, 10));
    assertThat(loading.effectiveLengthIn(slender * 10 + 0.5, 10))
        .isGreaterThan(loading.effectiveLengthIn(slender * 10, 10));
  }

  @Property
  void a_longer_span_under_the_same_load_is_never_bent_less(
      @ForAll @DoubleRange(min = 12, max = 240) double spanIn,
      @ForAll @DoubleRange(min = 0, max = 120) double moreIn) {
    assertThat(ratioOfSpan(spanIn + moreIn))
        .isGreaterThanOrEqualTo(ratioOfSpan(spanIn) - LAST_BITS);
  }

  private static double ratioOfSpan(double spanIn) {
    double effectiveIn = BeamLoading.END_MOMENTS.effectiveLengthIn(spanIn, 5.5);
    BeamStability stability = BeamStability.of(Sample.TWO_BY_SIX, effectiveIn, Sample.plain());
    double momentInLb = 3 * spanIn * spanIn / 8;
    return Bending.of(momentInLb, Sample.TWO_BY_SIX, Sample.plain(), stability).check().ratio();
  }

  @Property
  void a_deeper_notch_never_carries_more_shear_and_the_tension_face_is_the_worse(
      @ForAll @DoubleRange(min = 0, max = 4) double depthIn,
      @ForAll @DoubleRange(min = 0, max = 1) double moreIn,
      @ForAll @DoubleRange(min = 0, max = 9) double reachIn) {
    EndNotch notch = new EndNotch(depthIn, reachIn);
    EndNotch deeper = new EndNotch(depthIn + moreIn, reachIn);
    double tensionLb = tension(notch);
    assertThat(tension(deeper)).isLessThanOrEqualTo(tensionLb + LAST_BITS);
    assertThat(compression(deeper)).isLessThanOrEqualTo(compression(notch) + 1e-9);
    assertThat(tensionLb).isLessThanOrEqualTo(compression(notch) + 1e-9);
  }

  private static double tension(EndNotch notch) {
    return NotchedShear.onTensionFace(1, Sample.TWO_BY_SIX, notch, Sample.stress(180))
        .allowableLb();
  }

  private static double compression(EndNotch notch) {
    return NotchedShear.onCompressionFace(1, Sample.TWO_BY_SIX, notch, Sample.stress(180))
        .allowableLb();
  }

  @Property
  void strength_at_an_angle_never_leaves_its_bounds(
      @ForAll @DoubleRange(min = 100, max = 2000) double across,
      @ForAll @DoubleRange(min = 1, max = 4) double times,
      @ForAll @DoubleRange(min = 0, max = 90) double angleDegrees) {
    assertThat(Hankinson.at(across * times, across, angleDegrees))
        .isBetween(across * (1 - 1e-9), across * times * (1 + 1e-9));
  }

  @Property
  void more_load_more_bending_or_more_offset_never_eases_a_post(
      @ForAll @DoubleRange(min = 0, max = 30_000) double forceLb,
      @ForAll @DoubleRange(min = 0, max = 30_000) double momentInLb,
      @ForAll @DoubleRange(min = 0, max = 3) double eccentricityIn,
      @ForAll @DoubleRange(min = 1, max = 2) double times) {
    double ratio = post(forceLb, momentInLb, eccentricityIn);
    assertThat(post(forceLb * times, momentInLb, eccentricityIn))
        .isGreaterThanOrEqualTo(ratio - LAST_BITS);
    assertThat(post(forceLb, momentInLb * times, eccentricityIn))
        .isGreaterThanOrEqualTo(ratio - LAST_BITS);
    assertThat(post(forceLb, momentInLb, eccentricityIn * times))
        .isGreaterThanOrEqualTo(ratio - LAST_BITS);
  }

  private static double post(double forceLb, double momentInLb, double eccentricityIn) {
    AdjustedValues values = Sample.plain();
    Rectangle section = Sample.FOUR_BY_FOUR;
    Column column = Column.of(forceLb, section, new Bracing(90, 90, 0.8), values);
    BeamStability stability = BeamStability.of(section, 90, values);
    Bending bending = Bending.of(momentInLb, section, values, stability);
    BentAxis axis = new BentAxis(bending, 3.5, eccentricityIn);
    return CombinedStress.of(column, axis, axis, stability).check().ratio();
  }

  @Property
  void a_longer_duration_factor_raises_strength_and_never_bearing_nor_stiffness(
      @ForAll @DoubleRange(min = 0.9, max = 1.6) double factor) {
    AdjustedValues plain = Sample.plain();
    AdjustedValues lasting = AdjustedValues.of(Sample.FIR, Adjustments.none().lasting(factor));
    assertThat(lasting.bending().psi() / plain.bending().psi())
        .isCloseTo(factor, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(lasting.bearing()).isEqualTo(plain.bearing());
    assertThat(lasting.elasticity()).isEqualTo(plain.elasticity());
  }
}

package org.scantling.mechanics;

import java.util.List;

/**
 * What a continuous beam does under one load case or a combination of cases.
 *
 * <p>Everything is exact for the loads, at and between the stations. Deflections come for EI = 1,
 * so in lb·in³: divide by the beam's EI in lb·in² to have inches.
 *
 * <p>Worked number: 100 in simple span, 10 lb/in: {@code mostSagging()} is 10·100²/8 = 12 500 in·lb
 * at 50 in; {@code largestSpanDeflection(0)} is 5·10·100⁴/384 = 13 020 833 lb·in³, which at EI =
 * 1e8 lb·in² is 0.130 in.
 */
public final class BeamResult {
  private final LineCurve curve;
  private final int[] supports;
  private final SupportForces onSupports;

  BeamResult(LineCurve curve, int[] supports, SupportForces onSupports) {
    this.curve = curve;
    this.supports = supports;
    this.onSupports = onSupports;
  }

  /**
   * The sum of several cases, each times its factor: a load combination from unit cases.
   *
   * @param cases results of one call of {@link ContinuousBeam#solve(List)}
   * @param factors one for each case, dimensionless or in the unit of the case's load
   * @throws IllegalArgumentException if the counts differ or the cases come from different calls
   */
  public static BeamResult combine(List<BeamResult> cases, double... factors) {
    SupportForces reactions = combineOnSupports(cases, factors);
    BeamResult first = cases.get(0);
    LineCurve sum = first.curve.blank();
    for (int i = 0; i < factors.length; i++) {
      sum.add(cases.get(i).curve, factors[i]);
    }
    return new BeamResult(sum, first.supports, reactions);
  }

  /**
   * What {@link #combine} presses on the supports alone, lb, for who asks no more: a long beam has
   * far more stations than supports.
   *
   * @throws IllegalArgumentException as {@link #combine} does
   */
  public static SupportForces combineOnSupports(List<BeamResult> cases, double... factors) {
    if (cases.isEmpty() || cases.size() != factors.length) {
      throw new IllegalArgumentException(
          cases.size() + " cases and " + factors.length + " factors must be as many, 1 or more");
    }
    for (int i = 0; i < factors.length; i++) {
      if (cases.get(i).curve.stations() != cases.get(0).curve.stations()) {
        throw new IllegalArgumentException(
            "case " + (i + 1) + " must come from the same call of solve as the first");
      }
    }
    return SupportForces.combine(cases, factors);
  }

  /** What presses on each support, from the left, from the right and right over it, lb. */
  public SupportForces onSupports() {
    return onSupports;
  }

  /** Upward force of a support on the beam, lb; supports count from 0. Negative is uplift. */
  public double reactionLb(int support) {
    return onSupports.totalLb(support);
  }

  /** The same of all supports. */
  public double[] reactionsLb() {
    double[] reactions = new double[onSupports.supportCount()];
    for (int support = 0; support < reactions.length; support++) {
      reactions[support] = onSupports.totalLb(support);
    }
    return reactions;
  }

  /** Moment, in·lb, sagging positive, at a place in inches from the left tip. */
  public double momentInLb(double atIn) {
    return curve.stateAt(onBeam(atIn)).moment;
  }

  /**
   * Shear, lb, at a place in inches from the left tip; where it jumps (a support, a point load),
   * the value just right of the jump, except at the right tip.
   */
  public double shearLb(double atIn) {
    return curve.stateAt(onBeam(atIn)).shear;
  }

  /** Deflection for EI = 1, lb·in³, downwards positive. */
  public double deflectionLbIn3(double atIn) {
    return curve.stateAt(onBeam(atIn)).deflection;
  }

  private double onBeam(double atIn) {
    double lengthIn = curve.stations().lengthIn();
    if (!(atIn >= 0 && atIn <= lengthIn)) {
      throw new IllegalArgumentException(
          "place " + atIn + " in must be on the beam, 0 to " + lengthIn + " in");
    }
    return atIn;
  }

  /** Largest sagging moment of the whole beam, in·lb; 0 if it sags nowhere. */
  public Peak mostSagging() {
    return curve.mostSagging(0, curve.stations().last());
  }

  /** Largest hogging moment of the whole beam, in·lb, negative; 0 if it hogs nowhere. */
  public Peak mostHogging() {
    return curve.mostHogging(0, curve.stations().last());
  }

  /** Largest moment of either sign, in·lb, with its sign. */
  public Peak largestMoment() {
    Peak hogging = mostHogging();
    return mostSagging().orLarger(hogging.atIn(), hogging.amount());
  }

  /** Largest shear of the whole beam, lb, with its sign. */
  public Peak largestShear() {
    return curve.largestShear(0, curve.stations().last());
  }

  /** Largest deflection in a span, for EI = 1, lb·in³, with its sign; spans count from 0. */
  public Peak largestSpanDeflection(int span) {
    return curve.largestDeflection(supports[span], supports[span + 1]);
  }

  /** Deflection of the left tip for EI = 1, lb·in³; 0 where there is no overhang. */
  public double leftTipDeflectionLbIn3() {
    return curve.deflection(0);
  }

  /** Deflection of the right tip for EI = 1, lb·in³; 0 where there is no overhang. */
  public double rightTipDeflectionLbIn3() {
    return curve.deflection(curve.stations().last());
  }

  /** Largest sagging moment within a span, in·lb; 0 if it sags nowhere there. */
  public Peak mostSagging(int span) {
    return curve.mostSagging(supports[span], supports[span + 1]);
  }

  /** Largest shear within a span, lb, with its sign. */
  public Peak largestShear(int span) {
    return curve.largestShear(supports[span], supports[span + 1]);
  }

  /** Places at which the arrays below hold values, inches from the left tip, ascending. */
  public double[] stationsIn() {
    return curve.stations().toArray();
  }

  /** Shear just left of each station, lb. */
  public double[] shearsBeforeLb() {
    return curve.shearsBefore();
  }

  /** Shear just right of each station, lb. */
  public double[] shearsAfterLb() {
    return curve.shearsAfter();
  }

  /** Moment at each station, in·lb, sagging positive. */
  public double[] momentsInLb() {
    return curve.moments();
  }

  /** Deflection at each station for EI = 1, lb·in³, downwards positive. */
  public double[] deflectionsLbIn3() {
    return curve.deflections();
  }
}

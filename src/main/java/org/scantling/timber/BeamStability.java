package org.scantling.timber;

import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * How much of its bending strength a beam keeps against rolling over sideways.
 *
 * @param effectiveLengthIn le, 0 for a beam held all along
 * @param slendernessRatio R_B
 * @param criticalStressPsi F_bE, infinite for a beam held all along
 * @param startStressPsi Fb*, the bending value without C_L and C_fu
 * @param stabilityFactor C_L, above 0 and not above 1
 */
public record BeamStability(
    double effectiveLengthIn,
    double slendernessRatio,
    double criticalStressPsi,
    double startStressPsi,
    double stabilityFactor) {
  private static final double GREATEST_SLENDERNESS = 50;

  /**
   * The beam stability factor C_L with its working.
   *
   * <p>A piece no deeper than broad cannot roll over: C_L is 1 whatever the length.
   *
   * @param section the section as loaded
   * @param effectiveLengthIn le from {@link BeamLoading}, 0 or more
   * @param values adjusted values of the piece, for Fb* and E min'
   * @return the factor and what made it; R_B over 50 is not refused here but fails {@link #check()}
   *     <p>Source: NDS, 2018, 3.3.3. Worked: F_bE 2.83 times Fb* gives C_L 0.974.
   */
  public static BeamStability of(
      Rectangle section, double effectiveLengthIn, AdjustedValues values) {
    Require.zeroOrMore("effective length", effectiveLengthIn, "in");
    double breadthIn = section.breadthIn();
    double slenderness = Math.sqrt(effectiveLengthIn * section.depthIn()) / breadthIn;
    double minimumPsi = values.elasticityMinimum().psi();
    double criticalPsi = 1.20 * minimumPsi / (slenderness * slenderness);
    double startPsi = values.bendingStar().psi();
    boolean cannotRoll = section.depthIn() <= breadthIn || !(slenderness > 0);
    double factor = cannotRoll ? 1 : factor(criticalPsi / startPsi);
    return new BeamStability(effectiveLengthIn, slenderness, criticalPsi, startPsi, factor);
  }

  /** C_L from F_bE/Fb*. */
  static double factor(double criticalToStartRatio) {
    double mean = (1 + criticalToStartRatio) / 1.9;
    // the small root as a quotient: the printed difference loses its digits for held beams
    double small = criticalToStartRatio / 0.95;
    return small / (mean + Math.sqrt(mean * mean - small));
  }

  /** C_L as a factor to lay on Fb. */
  public Factor asFactor() {
    return new Factor("C_L", stabilityFactor);
  }

  /** R_B against the 50 that the standard allows (NDS 2018, 3.3.3.7). */
  public Check check() {
    return new Check(slendernessRatio, GREATEST_SLENDERNESS);
  }
}

package org.scantling.timber;

import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * How much of its strength a post keeps against bowing out about one axis.
 *
 * @param effectiveLengthIn le, the buckling length Ke·l
 * @param slendernessRatio le/d
 * @param criticalStressPsi F_cE, infinite for a post held all along
 * @param startStressPsi Fc*
 * @param stabilityFactor C_P, above 0 and not above 1
 */
public record ColumnStability(
    double effectiveLengthIn,
    double slendernessRatio,
    double criticalStressPsi,
    double startStressPsi,
    double stabilityFactor) {
  private static final double GREATEST_SLENDERNESS = 50;

  /**
   * The column stability factor C_P about one axis, with its working.
   *
   * @param effectiveLengthIn le = Ke·l for that axis, 0 or more
   * @param depthIn d, the dressed side in the direction of bowing, above 0
   * @param values adjusted values of the piece, for Fc* and E min'
   * @param straightnessFactor c, by kind of piece (0.8 for sawn timber), above 0 and not above 1
   * @return the factor and what made it; le/d over 50 is not refused here but fails {@link
   *     #check()}
   *     <p>Source: NDS, 2018, 3.7.1. Worked: le 96 in, d 3.5 in, Fc* 1000 psi, E min' 474 452 psi,
   *     c 0.8 gives 0.4464.
   */
  public static ColumnStability of(
      double effectiveLengthIn, double depthIn, AdjustedValues values, double straightnessFactor) {
    Require.zeroOrMore("effective length", effectiveLengthIn, "in");
    Require.positive("straightness factor c", straightnessFactor, "");
    Require.within("straightness factor c", straightnessFactor, "", 0, 1);
    double slenderness = effectiveLengthIn / Require.positive("depth", depthIn, "in");
    double minimumPsi = values.elasticityMinimum().psi();
    double criticalPsi = 0.822 * minimumPsi / (slenderness * slenderness);
    double startPsi = values.compression().psi();
    double factor = slenderness > 0 ? factor(criticalPsi / startPsi, straightnessFactor) : 1;
    return new ColumnStability(effectiveLengthIn, slenderness, criticalPsi, startPsi, factor);
  }

  /** C_P from F_cE/Fc* and c. */
  static double factor(double criticalToStartRatio, double straightnessFactor) {
    double mean = (1 + criticalToStartRatio) / (2 * straightnessFactor);
    // the small root as a quotient: the printed difference loses its digits for short posts
    double small = criticalToStartRatio / straightnessFactor;
    return small / (mean + Math.sqrt(mean * mean - small));
  }

  /** C_P as a factor to lay on Fc. */
  public Factor asFactor() {
    return new Factor("C_P", stabilityFactor);
  }

  /** le/d against the 50 that the standard allows (NDS 2018, 3.7.1.4, from memory). */
  public Check check() {
    return new Check(slendernessRatio, GREATEST_SLENDERNESS);
  }
}

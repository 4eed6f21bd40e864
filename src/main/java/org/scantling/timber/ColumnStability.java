package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How much of its strength a post keeps against bowing out about one axis.
 *
 * @param length le, the buckling length
 * @param depthIn d, the side in the direction of bowing
 * @param minimum E min'
 * @param start Fc*
 * @param straightnessFactor c
 * @param slendernessRatio le/d
 * @param criticalStressPsi F_cE, infinite for a post held all along
 * @param criticalRatio F_cE over Fc*
 * @param meanRatio half of what the root of C_P is taken of
 * @param stabilityFactor C_P, above 0 and not above 1
 */
public record ColumnStability(
    BucklingLength length,
    double depthIn,
    AdjustedStress minimum,
    AdjustedStress start,
    double straightnessFactor,
    double slendernessRatio,
    double criticalStressPsi,
    double criticalRatio,
    double meanRatio,
    double stabilityFactor)
    implements Calculated {
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
    return of(new BucklingLength(1, effectiveLengthIn), depthIn, values, straightnessFactor);
  }

  /** The same for a length with its own working. */
  public static ColumnStability of(
      BucklingLength length, double depthIn, AdjustedValues values, double straightnessFactor) {
    Require.positive("straightness factor c", straightnessFactor, "");
    Require.within("straightness factor c", straightnessFactor, "", 0, 1);
    double slenderness = length.lengthIn() / Require.positive("depth", depthIn, "in");
    AdjustedStress minimum = values.elasticityMinimum();
    AdjustedStress start = values.compression();
    double criticalPsi = 0.822 * minimum.psi() / (slenderness * slenderness);
    double ratio = criticalPsi / start.psi();
    double mean = (1 + ratio) / (2 * straightnessFactor);
    double factor = slenderness > 0 ? factor(ratio, mean, straightnessFactor) : 1;
    return new ColumnStability(
        length,
        depthIn,
        minimum,
        start,
        straightnessFactor,
        slenderness,
        criticalPsi,
        ratio,
        mean,
        factor);
  }

  private static double factor(double ratio, double mean, double straightnessFactor) {
    // the small root as a quotient: the printed difference loses its digits for short posts
    double small = ratio / straightnessFactor;
    return small / (mean + Math.sqrt(mean * mean - small));
  }

  /** le, the buckling length Ke·l. */
  public double effectiveLengthIn() {
    return length.lengthIn();
  }

  /** Fc*. */
  public double startStressPsi() {
    return start.psi();
  }

  /** C_P as a factor to lay on Fc. */
  public Factor asFactor() {
    return new Factor("C_P", stabilityFactor);
  }

  /** le/d against the 50 that the standard allows (NDS 2018, 3.7.1.4, from memory). */
  public Check check() {
    return new Check(slendernessRatio, GREATEST_SLENDERNESS);
  }

  @Override
  public List<FormulaLine> lines() {
    FormulaLine starred = start.allowed("compression-star");
    if (!(slendernessRatio > 0)) {
      return List.of(starred);
    }
    List<FormulaLine> lines = new ArrayList<>(length.lines());
    lines.add(
        FormulaLine.of("euler", Measure.psi(criticalStressPsi))
            .with("stiffness", Measure.psi(minimum.psi()))
            .with("effective", Measure.inches(length.lengthIn()))
            .with("breadth", Measure.inches(depthIn)));
    lines.add(starred);
    lines.add(
        FormulaLine.of("buckling-ratio", Measure.ratio(criticalRatio))
            .with("euler", Measure.psi(criticalStressPsi))
            .with("star", Measure.psi(start.psi())));
    Measure straight = Measure.ratio(straightnessFactor);
    lines.add(
        FormulaLine.of("mean", Measure.ratio(meanRatio))
            .with("ratio", Measure.ratio(criticalRatio))
            .with("straight", straight));
    lines.add(
        FormulaLine.of("stability", Measure.ratio(stabilityFactor))
            .with("ratio", Measure.ratio(criticalRatio))
            .with("mean", Measure.ratio(meanRatio))
            .with("straight", straight));
    return lines;
  }
}

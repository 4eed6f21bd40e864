package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * How much of its bending strength a beam keeps against rolling over sideways.
 *
 * @param length le, 0 for a beam held all along
 * @param section the section as loaded
 * @param minimum E min'
 * @param start Fb*, the bending value without C_L and C_fu
 * @param slendernessRatio R_B
 * @param criticalStressPsi F_bE, infinite for a beam held all along
 * @param criticalRatio F_bE over Fb*
 * @param meanRatio half of what the root of C_L is taken of
 * @param stabilityFactor C_L, above 0 and not above 1
 */
public record BeamStability(
    EffectiveLength length,
    Rectangle section,
    AdjustedStress minimum,
    AdjustedStress start,
    double slendernessRatio,
    double criticalStressPsi,
    double criticalRatio,
    double meanRatio,
    double stabilityFactor)
    implements Calculated {
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
    return of(section, EffectiveLength.stated(effectiveLengthIn, section.depthIn()), values);
  }

  /** The same for a length with its own working. */
  public static BeamStability of(Rectangle section, EffectiveLength length, AdjustedValues values) {
    double breadthIn = section.breadthIn();
    double slenderness = Math.sqrt(length.lengthIn() * section.depthIn()) / breadthIn;
    AdjustedStress minimum = values.elasticityMinimum();
    AdjustedStress start = values.bendingStar();
    double criticalPsi = 1.20 * minimum.psi() / (slenderness * slenderness);
    double ratio = criticalPsi / start.psi();
    double mean = (1 + ratio) / 1.9;
    boolean cannotRoll = cannotRoll(section, slenderness);
    double factor = cannotRoll ? 1 : factor(ratio, mean);
    return new BeamStability(
        length, section, minimum, start, slenderness, criticalPsi, ratio, mean, factor);
  }

  private static boolean cannotRoll(Rectangle section, double slenderness) {
    return section.depthIn() <= section.breadthIn() || !(slenderness > 0);
  }

  private static double factor(double ratio, double mean) {
    // the small root as a quotient: the printed difference loses its digits for held beams
    double small = ratio / 0.95;
    return small / (mean + Math.sqrt(mean * mean - small));
  }

  /** le. */
  public double effectiveLengthIn() {
    return length.lengthIn();
  }

  /** Fb*, the bending value without C_L and C_fu. */
  public double startStressPsi() {
    return start.psi();
  }

  /** C_L as a factor to lay on Fb. */
  public Factor asFactor() {
    return new Factor("C_L", stabilityFactor);
  }

  /** R_B against the 50 that the standard allows (NDS 2018, 3.3.3.7). */
  public Check check() {
    return new Check(slendernessRatio, GREATEST_SLENDERNESS);
  }

  /** None for a beam that cannot roll over: its factor is 1 without any working. */
  @Override
  public List<FormulaLine> lines() {
    if (cannotRoll(section, slendernessRatio)) {
      return List.of();
    }
    List<FormulaLine> lines = new ArrayList<>(length.lines());
    lines.add(
        FormulaLine.of("slenderness", Measure.ratio(slendernessRatio))
            .with("length", Measure.inches(length.lengthIn()))
            .with("depth", Measure.inches(section.depthIn()))
            .with("breadth", Measure.inches(section.breadthIn())));
    lines.add(
        FormulaLine.of("critical", Measure.ratio(criticalRatio))
            .with("stiffness", Measure.psi(minimum.psi()))
            .with("slenderness", Measure.ratio(slendernessRatio))
            .with("star", Measure.psi(start.lasting().psi()))
            .with("duration", Measure.ratio(start.durationFactor())));
    lines.add(
        FormulaLine.of("mean", Measure.ratio(meanRatio))
            .with("ratio", Measure.ratio(criticalRatio)));
    lines.add(
        FormulaLine.of("stability", Measure.ratio(stabilityFactor))
            .with("ratio", Measure.ratio(criticalRatio))
            .with("mean", Measure.ratio(meanRatio)));
    return lines;
  }

  /** F_bE by itself, with le in lengths of what may roll over; R_B is not told apart from it. */
  public FormulaLine rolling() {
    return FormulaLine.of("rolling", Measure.psi(criticalStressPsi))
        .with("stiffness", Measure.psi(minimum.psi()))
        .with("breadth", Measure.inches(section.breadthIn()))
        .with("lengths", Measure.ratio(length.lengthIn() / length.unbracedIn()))
        .with("unbraced", Measure.inches(length.unbracedIn()));
  }
}

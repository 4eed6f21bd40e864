package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard wood presses back on a dowel-type fastener.
 *
 * @param specificGravityRatio G of the wood
 * @param diameterIn nominal diameter of the fastener
 * @param along Fe along the grain
 * @param across Fe across the grain, the same as along for thin fasteners
 */
public record DowelBearing(
    double specificGravityRatio, double diameterIn, Strength along, Strength across) {
  static final double THICK_DOWEL_IN = 0.25;
  private static final double TABLE_STEP_PSI = 50;

  /**
   * A strength by its formula.
   *
   * @param exactPsi what the formula comes to
   * @param countedPsi what the table prints of it, which counts
   */
  record Strength(double exactPsi, double countedPsi) {
    static Strength printed(double exactPsi) {
      return new Strength(exactPsi, Math.round(exactPsi / TABLE_STEP_PSI) * TABLE_STEP_PSI);
    }
  }

  /**
   * The dowel bearing strength of a wood, as the table prints it, to the nearest 50 psi.
   *
   * <p>Fasteners under 1/4 in press the same in any direction; thicker ones split the wood sooner
   * across the grain.
   *
   * @param specificGravityRatio G of the wood, above 0 and below 1.5
   * @param diameterIn nominal diameter of the fastener, above 0
   * @return Fe along and across the grain in psi
   *     <p>Source: NDS, 2018, Table 12.3.3. Worked: G 0.50 and a 1/2 in bolt gives 5600 and 3150
   *     psi, a 0.162 in nail 4650 psi.
   */
  public static DowelBearing of(double specificGravityRatio, double diameterIn) {
    Require.positive("specific gravity", specificGravityRatio, "");
    Require.below("specific gravity", specificGravityRatio, "", 1.5);
    Require.positive("fastener diameter", diameterIn, "in");
    if (diameterIn < THICK_DOWEL_IN) {
      Strength thin = Strength.printed(16600 * Math.pow(specificGravityRatio, 1.84));
      return new DowelBearing(specificGravityRatio, diameterIn, thin, thin);
    }
    double acrossPsi = 6100 * Math.pow(specificGravityRatio, 1.45) / Math.sqrt(diameterIn);
    return new DowelBearing(
        specificGravityRatio,
        diameterIn,
        Strength.printed(11200 * specificGravityRatio),
        Strength.printed(acrossPsi));
  }

  /** Fe along the grain in psi. */
  public double alongPsi() {
    return along.countedPsi();
  }

  /** Fe across the grain in psi. */
  public double acrossPsi() {
    return across.countedPsi();
  }

  /**
   * Fe at an angle to the grain, in psi.
   *
   * <p>Source: NDS, 2018, 12.3.4. Worked: 5600 and 3150 psi at 45 degrees gives 4032 psi.
   */
  public double atPsi(double angleDegrees) {
    return Hankinson.at(alongPsi(), acrossPsi(), angleDegrees);
  }

  private boolean thin() {
    return diameterIn < THICK_DOWEL_IN;
  }

  /** What leads to the strength at an angle: that along the grain, that across it, or both. */
  List<FormulaLine> lines(double angleDegrees) {
    if (thin()) {
      return List.of(line("fe-thin", along));
    }
    List<FormulaLine> lines = new ArrayList<>();
    if (angleDegrees < 90) {
      lines.add(line("fe-along", along));
    }
    if (angleDegrees > 0) {
      lines.add(line("fe-across", across).with("diameter", Measure.inches(diameterIn)));
    }
    if (angleDegrees > 0 && angleDegrees < 90) {
      lines.add(Hankinson.of(alongPsi(), acrossPsi(), angleDegrees).line("fe-slant"));
    }
    return lines;
  }

  /** The formula as it stands; what the table makes of it goes on. */
  private FormulaLine line(String id, Strength strength) {
    return FormulaLine.of(id, Measure.psi(strength.exactPsi()))
        .with("gravity", Measure.ratio(specificGravityRatio))
        .with("printed", Measure.psi(strength.countedPsi()));
  }
}

package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * R_d, by which what a mode yields at is divided: for thick shanks by mode and angle, for thin ones
 * the same in all modes.
 *
 * <p>Source: NDS, 2018, Table 12.3.1B.
 *
 * @param dowel the fastener
 * @param angleDegrees the steepest between load and grain
 * @param angleFactor K_theta, 1 for fasteners that do not feel the grain
 */
record YieldReduction(Dowel dowel, double angleDegrees, double angleFactor) implements Calculated {
  private static final double CRUSHES = 4;
  private static final double TILTS = 3.6;
  private static final double BENDS = 3.2;

  static YieldReduction of(Dowel dowel, DowelMember main, DowelMember side) {
    double steepestDegrees = Math.max(main.angleDegrees(), side.angleDegrees());
    double ofAngle = dowel.feelsTheGrain() ? 1 + 0.25 * steepestDegrees / 90 : 1;
    return new YieldReduction(dowel, steepestDegrees, ofAngle);
  }

  /** Of modes I. */
  double crushFactor() {
    return factor(CRUSHES);
  }

  /** Of mode II. */
  double tiltFactor() {
    return factor(TILTS);
  }

  /** Of modes III and IV. */
  double bendFactor() {
    return factor(BENDS);
  }

  private double factor(double ofMode) {
    return (dowel.thin() ? dowel.thinReduction() : ofMode) * angleFactor;
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    if (dowel.feelsTheGrain()) {
      lines.add(
          FormulaLine.of("turned", Measure.ratio(angleFactor))
              .with("angle", Measure.count(angleDegrees)));
    }
    if (dowel.thin()) {
      lines.add(thin());
    } else {
      lines.add(thick("reduction-crush", crushFactor()));
      lines.add(thick("reduction-tilt", tiltFactor()));
      lines.add(thick("reduction-bend", bendFactor()));
    }
    return lines;
  }

  private FormulaLine thin() {
    String id = dowel.thinnest() ? "reduction-thinnest" : "reduction-thin";
    return turned(
        FormulaLine.of(id, Measure.ratio(crushFactor()))
            .with("diameter", Measure.inches(dowel.shankDiameterIn())));
  }

  private FormulaLine thick(String id, double factor) {
    return turned(FormulaLine.of(id, Measure.ratio(factor)));
  }

  private FormulaLine turned(FormulaLine line) {
    return dowel.feelsTheGrain() ? line.with("turned", Measure.ratio(angleFactor)) : line;
  }
}

package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Wind on the timber of an open frame: posts, crossbeam ends, rails, pickets, lattice.
 *
 * <p>Each row of the walk takes its own wind; one row does not shelter the next.
 *
 * @param panel solid and gross area
 * @param velocityPressurePsf q, psf
 * @param rule C_f bands, G and the minimum pressure
 * @param solidityRatio how solid the frame counts: as it is, or the end of a band below it
 * @param cfFactor force coefficient C_f there
 * @param calculatedPsf q G C_f on solid area, psf
 * @param pressurePsf the calculated pressure or the minimum, whichever is larger, psf
 * @param minimumGoverns true where the minimum is larger
 * @param forceLb pressure times solid area, lb, at the level of the velocity pressure
 */
public record LatticeWind(
    WindPanel panel,
    double velocityPressurePsf,
    LatticeRule rule,
    double solidityRatio,
    double cfFactor,
    double calculatedPsf,
    double pressurePsf,
    boolean minimumGoverns,
    double forceLb)
    implements SideWind {

  public LatticeWind {
    Require.zeroOrMore("wind pressure", pressurePsf, "psf");
  }

  /**
   * Finds the wind force on an open frame.
   *
   * @param panel solid and gross area of the frame
   * @param velocityPressurePsf q_z at the middle of the area, psf, zero or more
   * @param rule C_f bands, G and the minimum pressure
   * @return pressure on solid area and force, strength level when q is
   * @throws IllegalArgumentException if the panel is too solid to count as open
   *     <p>Source: ASCE 7, 2016, sections 29.4 and 29.7
   *     <p>Worked number: q 24.46 psf on a lone post (C_f 2.0, G 0.85) gives 41.58 psf.
   */
  public static LatticeWind on(WindPanel panel, double velocityPressurePsf, LatticeRule rule) {
    double solidityRatio = panel.solidityRatio();
    return as(
        panel, velocityPressurePsf, rule, solidityRatio, rule.bands().cfFactor(solidityRatio));
  }

  /** The same outline as if it were so solid, with that coefficient. */
  static LatticeWind as(
      WindPanel panel,
      double velocityPressurePsf,
      LatticeRule rule,
      double solidityRatio,
      double cfFactor) {
    Require.zeroOrMore("velocity pressure", velocityPressurePsf, "psf");
    double calculatedPsf = velocityPressurePsf * rule.gustFactor() * cfFactor;
    double pressurePsf = Math.max(calculatedPsf, rule.minimumPsf());
    double solidFt2 = solidityRatio * panel.grossAreaIn2() / Inches.SQUARE_PER_SQUARE_FOOT;
    return new LatticeWind(
        panel,
        velocityPressurePsf,
        rule,
        solidityRatio,
        cfFactor,
        calculatedPsf,
        pressurePsf,
        rule.minimumPsf() > calculatedPsf,
        pressurePsf * solidFt2);
  }

  @Override
  public boolean wall() {
    return false;
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        pressure(),
        FormulaLine.of("timber", Measure.pounds(forceLb))
            .with("pressure", Measure.psf(pressurePsf))
            .with("gross", Measure.squareFeet(panel.grossAreaIn2()))
            .with("solidity", Measure.ratio(solidityRatio)));
  }

  private FormulaLine pressure() {
    FormulaLine line =
        FormulaLine.of(minimumGoverns ? "least" : "pressure", Measure.psf(calculatedPsf))
            .with("pressure", Measure.psf(velocityPressurePsf))
            .with("gust", Measure.ratio(rule.gustFactor()))
            .with("cf", Measure.ratio(cfFactor))
            .with("least", Measure.psf(rule.minimumPsf()))
            .with("solid", Measure.squareFeet(panel.solidAreaIn2()))
            .with("gross", Measure.squareFeet(panel.grossAreaIn2()))
            .with("solidity", Measure.ratio(panel.solidityRatio()));
    return solidityRatio < panel.solidityRatio()
        ? line.with("less", Measure.ratio(solidityRatio))
        : line;
  }
}

package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Wind on a side so solid that it stands in the wind like a wall.
 *
 * @param panel solid and gross area
 * @param velocityPressurePsf q, psf
 * @param rule C_f, G and the minimum pressure
 * @param openingFactor reduction for the openings left, 0 to 1
 * @param calculatedPsf q G C_f times the reduction, psf on gross area
 * @param pressurePsf the calculated pressure or the minimum, whichever is larger, psf
 * @param minimumGoverns true where the minimum is larger
 * @param forceLb pressure times gross area, lb, at the level of the velocity pressure
 */
public record FreestandingWallWind(
    WindPanel panel,
    double velocityPressurePsf,
    WallRule rule,
    double openingFactor,
    double calculatedPsf,
    double pressurePsf,
    boolean minimumGoverns,
    double forceLb)
    implements SideWind {
  private static final double SOLID_OVER_RATIO = 0.7;
  private static final double OPENING_EXPONENT = 1.5;

  public FreestandingWallWind {
    Require.share("reduction for openings", openingFactor);
  }

  /**
   * Finds the wind force on a nearly solid side.
   *
   * @param panel solid and gross area, solidity over 0.7
   * @param velocityPressurePsf q_h at the wall's top, psf, zero or more
   * @param rule C_f, G and the minimum pressure
   * @return pressure on gross area and force, strength level when q is
   * @throws IllegalArgumentException if the panel is open (solidity 0.7 or less)
   *     <p>Source: ASCE 7, 2016, section 29.3 and figure 29.3-1
   *     <p>Worked number: q 20 psf, G 0.85, C_f 1.4, solidity 0.8 give 21.67 psf on the gross area.
   */
  public static FreestandingWallWind on(
      WindPanel panel, double velocityPressurePsf, WallRule rule) {
    Require.zeroOrMore("velocity pressure", velocityPressurePsf, "psf");
    double openingFactor = openingFactor(panel.solidityRatio());
    double calculatedPsf =
        velocityPressurePsf * rule.gustFactor() * rule.cfFactor() * openingFactor;
    double pressurePsf = Math.max(calculatedPsf, rule.minimumPsf());
    return new FreestandingWallWind(
        panel,
        velocityPressurePsf,
        rule,
        openingFactor,
        calculatedPsf,
        pressurePsf,
        rule.minimumPsf() > calculatedPsf,
        pressurePsf * panel.grossAreaIn2() / Inches.SQUARE_PER_SQUARE_FOOT);
  }

  /**
   * Finds how much the openings of a nearly solid wall relieve it.
   *
   * @param solidityRatio ε, over 0.7, up to 1
   * @return 1 − (1 − ε)^1.5
   * @throws IllegalArgumentException if the solidity is 0.7 or less, or over 1
   *     <p>Source: ASCE 7, 2016, figure 29.3-1 notes
   *     <p>Worked number: solidity 0.8 gives 0.9106.
   */
  public static double openingFactor(double solidityRatio) {
    Require.share("solidity", solidityRatio);
    if (solidityRatio <= SOLID_OVER_RATIO) {
      throw new IllegalArgumentException(
          "solidity "
              + solidityRatio
              + " must be over 0.7 for a freestanding wall; a panel with more openings is an open"
              + " frame");
    }
    return 1 - Math.pow(1 - solidityRatio, OPENING_EXPONENT);
  }

  @Override
  public boolean wall() {
    return true;
  }

  @Override
  public double solidityRatio() {
    return panel.solidityRatio();
  }

  @Override
  public double cfFactor() {
    return rule.cfFactor();
  }

  @Override
  public List<FormulaLine> lines() {
    Measure gross = Measure.squareFeet(panel.grossAreaIn2());
    return List.of(
        FormulaLine.of(minimumGoverns ? "wall-least" : "wall", Measure.psf(calculatedPsf))
            .with("pressure", Measure.psf(velocityPressurePsf))
            .with("gust", Measure.ratio(rule.gustFactor()))
            .with("cf", Measure.ratio(rule.cfFactor()))
            .with("least", Measure.psf(rule.minimumPsf()))
            .with("solid", Measure.squareFeet(panel.solidAreaIn2()))
            .with("gross", gross)
            .with("solidity", Measure.ratio(panel.solidityRatio())),
        FormulaLine.of("closed", Measure.pounds(forceLb))
            .with("pressure", Measure.psf(pressurePsf))
            .with("gross", gross));
  }
}

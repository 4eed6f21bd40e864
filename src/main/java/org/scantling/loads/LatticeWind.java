package org.scantling.loads;

import org.scantling.quantity.Inches;
import org.scantling.quantity.Require;

/**
 * Wind on the timber of an open frame: posts, crossbeam ends, rails, pickets, lattice.
 *
 * <p>Each row of the walk takes its own wind; one row does not shelter the next.
 *
 * @param panel solid and gross area
 * @param cfFactor force coefficient C_f of the solidity band
 * @param calculatedPsf q G C_f on solid area, psf
 * @param pressurePsf the calculated pressure or the minimum, whichever is larger, psf
 * @param minimumGoverns true where the minimum is larger
 * @param forceLb pressure times solid area, lb, at the level of the velocity pressure
 */
public record LatticeWind(
    WindPanel panel,
    double cfFactor,
    double calculatedPsf,
    double pressurePsf,
    boolean minimumGoverns,
    double forceLb) {

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
    Require.zeroOrMore("velocity pressure", velocityPressurePsf, "psf");
    double cfFactor = rule.bands().cfFactor(panel.solidityRatio());
    double calculatedPsf = velocityPressurePsf * rule.gustFactor() * cfFactor;
    double pressurePsf = Math.max(calculatedPsf, rule.minimumPsf());
    return new LatticeWind(
        panel,
        cfFactor,
        calculatedPsf,
        pressurePsf,
        rule.minimumPsf() > calculatedPsf,
        pressurePsf * panel.solidAreaIn2() / Inches.SQUARE_PER_SQUARE_FOOT);
  }
}

package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * The reference design values of one species, grade and size class, before any factor.
 *
 * @param bendingPsi Fb, extreme fibre in bending
 * @param tensionPsi Ft, tension along the grain
 * @param shearPsi Fv, shear along the grain
 * @param bearingPsi Fc perpendicular, bearing across the grain
 * @param compressionPsi Fc, compression along the grain
 * @param elasticityPsi E, for deflection
 * @param elasticityMinimumPsi E min, for buckling; not above E
 * @param specificGravityRatio G, oven-dry, above 0 and below 1.5
 */
public record DesignValues(
    double bendingPsi,
    double tensionPsi,
    double shearPsi,
    double bearingPsi,
    double compressionPsi,
    double elasticityPsi,
    double elasticityMinimumPsi,
    double specificGravityRatio) {
  private static final double HEAVIEST_WOOD = 1.5;

  public DesignValues {
    Require.positive("Fb", bendingPsi, "psi");
    Require.positive("Ft", tensionPsi, "psi");
    Require.positive("Fv", shearPsi, "psi");
    Require.positive("Fc_perp", bearingPsi, "psi");
    Require.positive("Fc", compressionPsi, "psi");
    Require.positive("E", elasticityPsi, "psi");
    Require.positive("E_min", elasticityMinimumPsi, "psi");
    if (elasticityMinimumPsi > elasticityPsi) {
      throw new IllegalArgumentException(
          "E_min " + elasticityMinimumPsi + " psi must not be above E " + elasticityPsi + " psi");
    }
    Require.positive("specific gravity", specificGravityRatio, "");
    Require.below("specific gravity", specificGravityRatio, "", HEAVIEST_WOOD);
  }
}

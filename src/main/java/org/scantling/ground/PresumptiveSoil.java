package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * What a class of soil may be trusted with where nobody has tested it.
 *
 * @param bearingPsf vertical pressure, psf, above zero
 * @param lateralPsfPerFt sideways pressure for each foot of depth, psf/ft, above zero
 * @param frictionRatio sliding friction, zero where the class has cohesion instead
 * @param cohesionPsf cohesion, psf, zero where the class has friction instead
 *     <p>Source: IBC, 2018, table 1806.2
 */
public record PresumptiveSoil(
    double bearingPsf, double lateralPsfPerFt, double frictionRatio, double cohesionPsf) {
  public PresumptiveSoil {
    Require.positive("soil bearing", bearingPsf, "psf");
    Require.positive("soil lateral bearing", lateralPsfPerFt, "psf/ft");
    Require.zeroOrMore("soil friction", frictionRatio, "");
    Require.zeroOrMore("soil cohesion", cohesionPsf, "psf");
  }
}

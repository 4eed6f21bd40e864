package org.scantling.ground;

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
    Argument.positive("soil bearing (psf)", bearingPsf);
    Argument.positive("soil lateral bearing (psf per ft)", lateralPsfPerFt);
    Argument.zeroOrMore("soil friction", frictionRatio);
    Argument.zeroOrMore("soil cohesion (psf)", cohesionPsf);
  }
}

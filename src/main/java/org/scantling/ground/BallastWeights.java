package org.scantling.ground;

/**
 * What concrete and soil weigh when they hold a post down.
 *
 * @param concretePcf unit weight of plain concrete, pcf, above zero
 * @param soilPcf unit weight of the tamped soil, pcf, zero or more; take the buoyant weight where
 *     water may stand
 * @param skinFrictionPsf allowable friction between the footing's side and the soil, psf; zero is
 *     the cautious choice, for frost and wetting undo it
 */
public record BallastWeights(double concretePcf, double soilPcf, double skinFrictionPsf) {
  public BallastWeights {
    Argument.positive("unit weight of concrete (pcf)", concretePcf);
    Argument.zeroOrMore("unit weight of soil (pcf)", soilPcf);
    Argument.zeroOrMore("skin friction (psf)", skinFrictionPsf);
  }
}

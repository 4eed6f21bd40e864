package org.scantling.ground;

import org.scantling.quantity.Require;

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
    Require.positive("unit weight of concrete", concretePcf, "pcf");
    Require.zeroOrMore("unit weight of soil", soilPcf, "pcf");
    Require.zeroOrMore("skin friction", skinFrictionPsf, "psf");
  }
}

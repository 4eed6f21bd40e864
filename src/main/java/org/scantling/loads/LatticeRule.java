package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * What the standard gives for wind on open frames.
 *
 * @param bands C_f by solidity
 * @param gustFactor G, above zero
 * @param minimumPsf least pressure on solid area, psf, strength level, zero or more; zero where the
 *     standard's minimum is not to apply
 *     <p>Source: ASCE 7, 2016, sections 26.11, 29.4 and 29.7
 */
public record LatticeRule(SolidityBands bands, double gustFactor, double minimumPsf) {
  public LatticeRule {
    Require.positive("gust factor G", gustFactor, "");
    Require.zeroOrMore("minimum wind pressure", minimumPsf, "psf");
  }
}

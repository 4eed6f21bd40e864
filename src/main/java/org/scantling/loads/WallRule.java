package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * What the standard gives for wind on a solid freestanding wall.
 *
 * @param cfFactor C_f for the wall's proportions, above zero
 * @param gustFactor G, above zero
 * @param minimumPsf least pressure, psf, strength level, zero or more
 *     <p>Source: ASCE 7, 2016, sections 26.11, 29.3 and 29.7
 */
public record WallRule(double cfFactor, double gustFactor, double minimumPsf) {
  public WallRule {
    Require.positive("force coefficient C_f", cfFactor, "");
    Require.positive("gust factor G", gustFactor, "");
    Require.zeroOrMore("minimum wind pressure", minimumPsf, "psf");
  }
}

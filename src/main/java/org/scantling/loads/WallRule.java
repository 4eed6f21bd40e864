package org.scantling.loads;

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
    Argument.positive("force coefficient C_f", cfFactor);
    Argument.positive("gust factor G", gustFactor);
    Argument.zeroOrMore("minimum wind pressure (psf)", minimumPsf);
  }
}

package org.scantling.timber;

import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * How hard a section is pulled or pressed where length does not matter.
 *
 * @param forceLb the force
 * @param areaIn2 the section that carries it, net of notches and holes
 * @param stressPsi ft or fc
 * @param allowable Ft', or Fc* for pressing at a net section
 */
public record AxialStress(
    double forceLb, double areaIn2, double stressPsi, AdjustedStress allowable) {

  /**
   * The stress along the grain at a section against what it may be.
   *
   * @param forceLb force, 0 or more
   * @param areaIn2 net area, above 0
   * @param allowable Ft' for pulling, Fc* for pressing
   * @return the stress and its limit
   *     <p>Source: NDS, 2018, 3.6.3 and 3.8.1. Worked: 2000 lb on 8.25 in² gives 242 psi.
   */
  public static AxialStress of(double forceLb, double areaIn2, AdjustedStress allowable) {
    Require.zeroOrMore("force along the grain", forceLb, "lb");
    Require.positive("net area", areaIn2, "in²");
    return new AxialStress(forceLb, areaIn2, forceLb / areaIn2, allowable);
  }

  /** The stress against the greatest it may be. */
  public Check check() {
    return new Check(stressPsi, allowable.psi());
  }
}

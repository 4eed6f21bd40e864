package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * A dowel-type fastener: bolt, lag screw, wood screw or nail.
 *
 * @param nominalDiameterIn the diameter it is sold by, above 0 and not above 1
 * @param shankDiameterIn D of the yield equations: the root of the thread for screws, above 0 and
 *     not above the nominal one
 * @param bendingYieldPsi Fyb, above 0
 */
public record Dowel(double nominalDiameterIn, double shankDiameterIn, double bendingYieldPsi) {
  private static final double THICKEST_IN = 1;

  public Dowel {
    Require.positive("fastener diameter", nominalDiameterIn, "in");
    Require.within("fastener diameter", nominalDiameterIn, "in", 0, THICKEST_IN);
    Require.positive("shank diameter", shankDiameterIn, "in");
    Require.within("shank diameter", shankDiameterIn, "in", 0, nominalDiameterIn);
    Require.positive("bending yield Fyb", bendingYieldPsi, "psi");
  }

  /** A fastener as thick where the wood shears it as its name says: a bolt or a nail. */
  public static Dowel smooth(double diameterIn, double bendingYieldPsi) {
    return new Dowel(diameterIn, diameterIn, bendingYieldPsi);
  }

  /** True where the shank is under 1/4 in, so that one reduction holds for all modes. */
  boolean thin() {
    return shankDiameterIn < DowelBearing.THICK_DOWEL_IN;
  }

  /** K_D of a thin shank (NDS 2018, Table 12.3.1B). */
  double thinReduction() {
    return thinnest() ? 2.2 : 10 * shankDiameterIn + 0.5;
  }

  boolean thinnest() {
    return shankDiameterIn <= 0.17;
  }

  /** True where the angle to the grain weakens it: from 1/4 in nominal. */
  boolean feelsTheGrain() {
    return nominalDiameterIn >= DowelBearing.THICK_DOWEL_IN;
  }
}

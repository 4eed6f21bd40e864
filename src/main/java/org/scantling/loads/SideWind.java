package org.scantling.loads;

import java.util.List;
import org.scantling.loads.SolidityBands.Band;
import org.scantling.quantity.Inches;

/**
 * Wind on the timber of a side, from a lone post to a closed wall.
 *
 * <p>The coefficient of an open frame falls by steps as the frame closes, so that read by the
 * letter a picket more could take a tenth off the push of the whole side. A side therefore takes at
 * least what it would take with any timber less: nothing is taken under the standard, and more
 * timber is never less wind.
 *
 * @param panel solid and gross area
 * @param wall true where the side is too solid for an open frame
 * @param forceLb push on the whole side, lb, at the level of the velocity pressure
 */
public record SideWind(WindPanel panel, boolean wall, double forceLb) {

  /**
   * Finds the wind force on a side.
   *
   * @param panel solid and gross area
   * @param velocityPressurePsf q, psf, zero or more
   * @param lattice what holds up to the most solid open frame
   * @param wall what holds above it
   * @return the force of the side's own band or wall, or of the end of a band below it where that
   *     is larger, strength level when q is
   *     <p>Source: ASCE 7, 2016, sections 29.3 and 29.4; that it never falls is common practice
   *     <p>Worked number: 10 sq ft 0.105 solid at q 20 psf, G 0.85: C_f 1.8 gives 32.13 lb, but 0.1
   *     solid at C_f 2.0 would have taken 34 lb, so 34 lb.
   */
  public static SideWind on(
      WindPanel panel, double velocityPressurePsf, LatticeRule lattice, WallRule wall) {
    boolean closed = panel.solidityRatio() > lattice.bands().openUpToRatio();
    double ownLb =
        closed
            ? FreestandingWallWind.on(panel, velocityPressurePsf, wall).forceLb()
            : LatticeWind.on(panel, velocityPressurePsf, lattice).forceLb();
    return new SideWind(
        panel, closed, Math.max(ownLb, withLessLb(panel, velocityPressurePsf, lattice)));
  }

  /** The most that the bands which end at or below the panel's solidity come to at their end. */
  private static double withLessLb(
      WindPanel panel, double velocityPressurePsf, LatticeRule lattice) {
    List<Band> bands = lattice.bands().bands();
    double mostLb = 0;
    for (int i = 0; i < bands.size(); i++) {
      boolean last = i + 1 == bands.size();
      double endRatio = last ? lattice.bands().openUpToRatio() : bands.get(i + 1).fromRatio();
      if (endRatio <= panel.solidityRatio()) {
        double calculatedPsf = velocityPressurePsf * lattice.gustFactor() * bands.get(i).cfFactor();
        double solidFt2 = endRatio * panel.grossAreaIn2() / Inches.SQUARE_PER_SQUARE_FOOT;
        mostLb = Math.max(mostLb, Math.max(calculatedPsf, lattice.minimumPsf()) * solidFt2);
      }
    }
    return mostLb;
  }
}

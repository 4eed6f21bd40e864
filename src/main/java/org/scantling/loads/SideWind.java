package org.scantling.loads;

import java.util.List;
import org.scantling.loads.SolidityBands.Band;
import org.scantling.quantity.Calculated;

/**
 * Wind on the timber of a side, from a lone post to a closed wall.
 *
 * <p>The coefficient of an open frame falls by steps as the frame closes, so that read by the
 * letter a picket more could take a tenth off the push of the whole side. A side therefore takes at
 * least what it would take with any timber less: nothing is taken under the standard, and more
 * timber is never less wind.
 */
public sealed interface SideWind extends Calculated permits LatticeWind, FreestandingWallWind {
  /** Solid and gross area. */
  WindPanel panel();

  /** True where the side is too solid for an open frame. */
  boolean wall();

  /** The solidity at which the force is largest: the side's own, or the end of a band below it. */
  double solidityRatio();

  /** Force coefficient C_f there. */
  double cfFactor();

  /**
   * q G C_f on the solid area there, or the least pressure; for a wall, with the relief of its
   * openings, on the gross area.
   */
  double pressurePsf();

  /** Push on the whole side, lb, at the level of the velocity pressure. */
  double forceLb();

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
  static SideWind on(
      WindPanel panel, double velocityPressurePsf, LatticeRule lattice, WallRule wall) {
    SideWind most =
        panel.solidityRatio() <= lattice.bands().openUpToRatio()
            ? LatticeWind.on(panel, velocityPressurePsf, lattice)
            : FreestandingWallWind.on(panel, velocityPressurePsf, wall);
    List<Band> bands = lattice.bands().bands();
    for (int i = 0; i < bands.size(); i++) {
      boolean last = i + 1 == bands.size();
      double endRatio = last ? lattice.bands().openUpToRatio() : bands.get(i + 1).fromRatio();
      if (endRatio <= panel.solidityRatio()) {
        double cfFactor = bands.get(i).cfFactor();
        SideWind less = LatticeWind.as(panel, velocityPressurePsf, lattice, endRatio, cfFactor);
        most = less.forceLb() > most.forceLb() ? less : most;
      }
    }
    return most;
  }
}

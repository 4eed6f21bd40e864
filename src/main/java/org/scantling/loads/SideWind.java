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
 * @param solidityRatio that at which the force is largest: the side's own, or the end of a band
 *     below it
 * @param cfFactor force coefficient C_f there
 * @param pressurePsf q G C_f on the solid area there, or the least pressure; for a wall, with the
 *     relief of its openings, on the gross area
 * @param forceLb push on the whole side, lb, at the level of the velocity pressure
 */
public record SideWind(
    WindPanel panel,
    boolean wall,
    double solidityRatio,
    double cfFactor,
    double pressurePsf,
    double forceLb) {

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
    SideWind most = own(panel, velocityPressurePsf, lattice, wall);
    List<Band> bands = lattice.bands().bands();
    for (int i = 0; i < bands.size(); i++) {
      boolean last = i + 1 == bands.size();
      double endRatio = last ? lattice.bands().openUpToRatio() : bands.get(i + 1).fromRatio();
      if (endRatio <= panel.solidityRatio()) {
        SideWind less =
            open(panel, endRatio, bands.get(i).cfFactor(), velocityPressurePsf, lattice);
        most = less.forceLb() > most.forceLb() ? less : most;
      }
    }
    return most;
  }

  /** By the band or the wall of the side's own solidity. */
  private static SideWind own(
      WindPanel panel, double velocityPressurePsf, LatticeRule lattice, WallRule wall) {
    double solidityRatio = panel.solidityRatio();
    if (solidityRatio <= lattice.bands().openUpToRatio()) {
      double cfFactor = lattice.bands().cfFactor(solidityRatio);
      return open(panel, solidityRatio, cfFactor, velocityPressurePsf, lattice);
    }
    FreestandingWallWind closed = FreestandingWallWind.on(panel, velocityPressurePsf, wall);
    return new SideWind(
        panel, true, solidityRatio, wall.cfFactor(), closed.pressurePsf(), closed.forceLb());
  }

  /** What a frame of that outline and solidity takes. */
  private static SideWind open(
      WindPanel panel,
      double solidityRatio,
      double cfFactor,
      double velocityPressurePsf,
      LatticeRule lattice) {
    double pressurePsf =
        Math.max(velocityPressurePsf * lattice.gustFactor() * cfFactor, lattice.minimumPsf());
    double solidFt2 = solidityRatio * panel.grossAreaIn2() / Inches.SQUARE_PER_SQUARE_FOOT;
    return new SideWind(panel, false, solidityRatio, cfFactor, pressurePsf, pressurePsf * solidFt2);
  }
}

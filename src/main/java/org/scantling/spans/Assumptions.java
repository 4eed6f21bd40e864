package org.scantling.spans;

import java.util.OptionalDouble;

/**
 * Everything that a span rests on besides size, species and grade. Two tables agree when these do.
 *
 * @param loads what presses
 * @param sag how far it may bend
 * @param use how the timber is used
 * @param beam how a beam is held and cut
 * @param post how a post is held
 */
public record Assumptions(Loads loads, Sag sag, Use use, Beam beam, Post post) {

  /**
   * @param deadPsf permanent load
   * @param livePsf load that comes and goes: people, snow
   * @param durationFactor C_D of the live load
   * @param personLb one person at the worst place instead of the live load, 0 for none
   * @param ownWeightAdded true where the timber's own weight comes on top of the dead load
   */
  public record Loads(
      double deadPsf,
      double livePsf,
      double durationFactor,
      double personLb,
      boolean ownWeightAdded) {}

  /**
   * @param wet true outdoors
   * @param incised true where its surface was cut open for the preservative
   * @param repetitiveFactor for dimension lumber that shares its load, 1 for a piece on its own
   */
  public record Use(boolean wet, boolean incised, double repetitiveFactor) {}

  /**
   * @param liveDivisor span over sag under live load alone, empty for no limit
   * @param totalDivisor span over sag under everything, empty for no limit
   * @param creepFactor how much the permanent part of the sag grows
   */
  public record Sag(OptionalDouble liveDivisor, OptionalDouble totalDivisor, double creepFactor) {}

  /**
   * @param notchIn depth of the recess over each support
   * @param supportIn length of bearing on each support, 0 where it is left out
   * @param heldAlong true where decking or the like stops it rolling over all along
   * @param spanCount equal spans in a row
   * @param shearOneDepthAway true where the load within one depth of a support is left out of the
   *     shear, as the standard allows for one simple span without notch
   * @param apart true for boards on either side of the posts, of which one is checked for the whole
   */
  public record Beam(
      double notchIn,
      double supportIn,
      boolean heldAlong,
      int spanCount,
      boolean shearOneDepthAway,
      boolean apart) {}

  /**
   * @param topHeld true where the top cannot sway
   * @param eccentricityRatio how far the load misses the centre, over the depth
   * @param pushLb sideways push of the wind on the top, strength level
   */
  public record Post(boolean topHeld, double eccentricityRatio, double pushLb) {}
}

package org.scantling.shop;

import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.tables.PostBed;

/** What is dug, what goes into the holes and what is left over, in cubic feet. */
final class Holes {
  private static final double CU_IN = 12 * 12 * 12;

  private final Built built;
  private final Geometry geometry;
  private final Structure.Footings footings;
  private final TopLine top;

  Holes(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.footings = built.footings();
    this.top = built.top();
  }

  boolean concrete() {
    return !built.inTheGround() || footings.backfill().equals(WayOfBuilding.CONCRETE);
  }

  boolean padded() {
    return footings.padded();
  }

  /** Gravel and pad under the foot. */
  double bedIn() {
    return bed().depthIn();
  }

  private PostBed bed() {
    return footings.onRock() ? PostBed.onRock() : PostBed.of(built::shop, padded());
  }

  /** How deep a hole is dug below its own ground. */
  double digIn(int row, int post) {
    return filledIn(row, post) + bedIn();
  }

  /** From the ground down to the foot of the post, or to the foot of the pier. */
  double filledIn(int row, int post) {
    return built.inTheGround() ? top.belowGroundIn(row, post) : footings.depthIn();
  }

  double deepestIn() {
    double deepestIn = 0;
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post < top.posts(); post++) {
        deepestIn = Math.max(deepestIn, digIn(row, post));
      }
    }
    return deepestIn;
  }

  /** Too deep to be dug with a shovel by somebody who stands beside it. */
  boolean fromAbove() {
    return deepestIn() > built.shop("digging.from-above");
  }

  private double areaIn2() {
    return Math.PI / 4 * footings.diameterIn() * footings.diameterIn();
  }

  private double roundPostIn2() {
    double postIn = built.inTheGround() ? geometry.posts().breadthIn() : 0;
    return areaIn2() - postIn * postIn;
  }

  private interface Depth {
    double in(int row, int post);
  }

  private double overPosts(Depth depth, double areaIn2) {
    double sumIn3 = 0;
    for (int post = 0; post < top.posts(); post++) {
      sumIn3 += (depth.in(0, post) + depth.in(1, post)) * areaIn2;
    }
    return sumIn3 / CU_IN;
  }

  double dugCuFt() {
    return overPosts(this::digIn, areaIn2());
  }

  /** What of it lies deeper than a shovel reaches. */
  double dugDeepCuFt() {
    double reachIn = built.shop("digging.from-above");
    return overPosts((row, post) -> Math.max(0, digIn(row, post) - reachIn), areaIn2());
  }

  double gravelCuFt() {
    return overPosts((row, post) -> bed().gravelIn(), areaIn2()) + gravelFillCuFt();
  }

  /** Gravel round the posts, above the bed. */
  double gravelFillCuFt() {
    boolean filled = built.inTheGround() && footings.backfill().equals(WayOfBuilding.GRAVEL);
    return filled ? overPosts(this::filledIn, roundPostIn2()) : 0;
  }

  /** The crown counts as half a disc of its height. */
  double concreteCuFt() {
    return concrete()
        ? overPosts(
            (row, post) -> filledIn(row, post) + built.shop("footing.crown") / 2, roundPostIn2())
        : 0;
  }

  double putBackCuFt() {
    boolean soil = built.inTheGround() && footings.backfill().equals(WayOfBuilding.TAMPED_SOIL);
    return soil ? overPosts(this::filledIn, roundPostIn2()) : 0;
  }

  /** Loose, as it lies in the barrow. */
  double toRemoveCuFt() {
    return (dugCuFt() - putBackCuFt()) * (1 + built.shop("soil.swell-share"));
  }
}

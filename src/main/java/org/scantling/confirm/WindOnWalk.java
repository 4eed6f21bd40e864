package org.scantling.confirm;

import org.scantling.design.Geometry;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.FoliageWind;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.LatticeWind;
import org.scantling.loads.WindPanel;

/**
 * The wind on the whole walk, brought down to its hardest-pressed post. No row shelters the other:
 * the standard gives no shielding, so each row takes the wind in full. Crossbeams stand close
 * behind each other, and those in the lee take a share.
 */
public final class WindOnWalk {
  private final Geometry geometry;
  private final Sides sides;
  private final Rules rules;

  /**
   * What closes the sides between two posts of a row.
   *
   * @param railDepthIn seen height of the rail, 0 for none
   * @param pickets upright pieces in a bay
   * @param picketBreadthIn seen breadth of each
   */
  public record Sides(double railDepthIn, double pickets, double picketBreadthIn) {}

  /**
   * @param pressurePsf velocity pressure at the top
   * @param lattice force coefficients of open frames
   * @param inLeaf how leaves fill the sides
   * @param bare how stems fill them in winter
   * @param shelter what one crossbeam takes off the next
   */
  public record Rules(
      double pressurePsf,
      LatticeRule lattice,
      FoliageCover inLeaf,
      FoliageCover bare,
      Shelter shelter) {}

  /**
   * @param shareRatio share of the full wind that is left in the lee of a crossbeam
   * @param reachDepths spacing over depth up to which there is a lee
   */
  public record Shelter(double shareRatio, double reachDepths) {}

  public WindOnWalk(Geometry geometry, Sides sides, Rules rules) {
    this.geometry = geometry;
    this.sides = sides;
    this.rules = rules;
  }

  /** Wind square to the walk, on its sides. */
  public SidePush across() {
    double heightIn = geometry.posts().heightIn();
    double bayIn = geometry.plan().bayIn();
    double shareIn = tributaryIn();
    double headerIn2 = geometry.headers().depthIn() * headerShareIn();
    double endsIn2 =
        geometry.crossbeams().breadthIn()
            * geometry.crossbeams().depthIn()
            * headerShareIn()
            / geometry.crossbeamSpacingIn();
    double railIn2 = sides.railDepthIn() * shareIn;
    double picketIn2 = sides.pickets() * sides.picketBreadthIn() * heightIn * shareIn / bayIn;
    double uprightIn2 = postIn2() + railIn2 + picketIn2;
    double grossIn2 = Math.max(shareIn, headerShareIn()) * geometry.overallHeightIn();
    double openIn2 = Math.max(0, shareIn * heightIn - uprightIn2);
    LatticeWind frame = lattice(headerIn2 + endsIn2 + uprightIn2, grossIn2);
    double leavesLb =
        FoliageWind.on(openIn2, rules.pressurePsf(), rules.inLeaf(), rules.bare()).worstLb();
    double topIn2 = headerIn2 + endsIn2;
    return new SidePush(
        pressed(frame, topIn2),
        (headerIn2 * headerMiddleIn() + endsIn2 * crossbeamMiddleIn()) / topIn2,
        pressed(frame, uprightIn2) + leavesLb,
        heightIn);
  }

  /** Wind along the walk, on the faces of the crossbeams and the posts. */
  public SidePush along() {
    double topLb = onCrossbeamLb() * windwardCount() / geometry.postCount();
    double heightIn = geometry.posts().heightIn();
    return new SidePush(topLb, crossbeamMiddleIn(), pressed(gable(), postIn2()), heightIn);
  }

  /** Wind along the walk on one crossbeam in full wind, strength level. */
  public double onCrossbeamLb() {
    return pressed(gable(), crossbeamIn2());
  }

  /** One crossbeam with its two posts, seen along the walk. */
  private LatticeWind gable() {
    double frameIn2 = geometry.crossbeamLengthIn() * geometry.overallHeightIn();
    return lattice(crossbeamIn2() + 2 * postIn2(), frameIn2);
  }

  private double crossbeamIn2() {
    return geometry.crossbeamLengthIn() * geometry.crossbeams().depthIn();
  }

  private double postIn2() {
    return geometry.posts().breadthIn() * geometry.posts().heightIn();
  }

  private double headerMiddleIn() {
    return geometry.headerTopIn() - geometry.headers().depthIn() / 2;
  }

  private double crossbeamMiddleIn() {
    return geometry.crossbeamUndersideIn() + geometry.crossbeams().depthIn() / 2;
  }

  /**
   * How many crossbeams in full wind are worth all of them, those in the lee of another counted by
   * their share.
   */
  private double windwardCount() {
    double apartDepths = geometry.crossbeamSpacingIn() / geometry.crossbeams().depthIn();
    double share = apartDepths <= rules.shelter().reachDepths() ? rules.shelter().shareRatio() : 1;
    return 1 + share * (geometry.crossbeamCount() - 1);
  }

  private LatticeWind lattice(double solidIn2, double grossIn2) {
    return LatticeWind.on(new WindPanel(solidIn2, grossIn2), rules.pressurePsf(), rules.lattice());
  }

  private static double pressed(LatticeWind wind, double areaIn2) {
    return wind.forceLb() * areaIn2 / wind.panel().solidAreaIn2();
  }

  /** Length of side that leans on the hardest-pressed post. */
  private double tributaryIn() {
    double bayIn = geometry.plan().bayIn();
    return geometry.plan().bays() > 1 ? bayIn : bayIn / 2;
  }

  private double headerShareIn() {
    double bayIn = geometry.plan().bayIn();
    double endIn = bayIn / 2 + geometry.headerTailIn();
    return geometry.plan().bays() > 1 ? Math.max(bayIn, endIn) : endIn;
  }
}

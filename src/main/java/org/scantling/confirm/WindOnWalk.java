package org.scantling.confirm;

import org.scantling.design.Geometry;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.FoliageWind;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.SideWind;
import org.scantling.loads.WallRule;
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
   * @param wall what a side so closed that it is no open frame counts as
   */
  public record Rules(
      double pressurePsf,
      LatticeRule lattice,
      FoliageCover inLeaf,
      FoliageCover bare,
      Shelter shelter,
      WallRule wall) {}

  /** What the wind does to a side, and the timber it does that to. */
  private record Side(double forceLb, double solidIn2) {
    /** The share of the force that falls on some of the timber. */
    double onLb(double areaIn2) {
      return forceLb * areaIn2 / solidIn2;
    }
  }

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
    double headerIn2 = geometry.headers().depthIn() * headerShareIn();
    double endsIn2 =
        geometry.crossbeams().breadthIn()
            * geometry.crossbeams().depthIn()
            * headerShareIn()
            / geometry.crossbeamSpacingIn();
    double topIn2 = headerIn2 + endsIn2;
    double grossIn2 = Math.max(tributaryIn(), headerShareIn()) * geometry.overallHeightIn();
    Side frame = side(topIn2 + uprightIn2(), grossIn2);
    return new SidePush(
        frame.onLb(topIn2),
        (headerIn2 * headerMiddleIn() + endsIn2 * crossbeamMiddleIn()) / topIn2,
        frame.onLb(uprightIn2()) + leavesLb(),
        heightIn);
  }

  /**
   * Wind square to the walk on one rail and what hangs on it, strength level: the rail, and half of
   * what closes the bay, the other half of which hangs on the header.
   */
  public double onRailLb() {
    double shareIn = tributaryIn();
    double railIn2 = sides.railDepthIn() * shareIn;
    double pressureLb = across().spreadLb() - leavesLb();
    double onTimberLb = pressureLb * (railIn2 + picketIn2() / 2) / uprightIn2();
    return (onTimberLb + leavesLb() / 2) * geometry.plan().bayIn() / shareIn;
  }

  private double uprightIn2() {
    return postIn2() + sides.railDepthIn() * tributaryIn() + picketIn2();
  }

  private double picketIn2() {
    return sides.pickets()
        * sides.picketBreadthIn()
        * geometry.posts().heightIn()
        * tributaryIn()
        / geometry.plan().bayIn();
  }

  private double leavesLb() {
    double openIn2 = Math.max(0, tributaryIn() * geometry.posts().heightIn() - uprightIn2());
    return FoliageWind.on(openIn2, rules.pressurePsf(), rules.inLeaf(), rules.bare()).worstLb();
  }

  /** Wind along the walk, on the faces of the crossbeams and the posts. */
  public SidePush along() {
    double topLb = onCrossbeamLb() * windwardCount() / geometry.postCount();
    double heightIn = geometry.posts().heightIn();
    return new SidePush(topLb, crossbeamMiddleIn(), gable().onLb(postIn2()), heightIn);
  }

  /** Wind along the walk on one crossbeam in full wind, strength level. */
  public double onCrossbeamLb() {
    return gable().onLb(crossbeamIn2());
  }

  /** One crossbeam with its two posts, seen along the walk. */
  private Side gable() {
    double frameIn2 = geometry.crossbeamLengthIn() * geometry.overallHeightIn();
    return side(crossbeamIn2() + 2 * postIn2(), frameIn2);
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

  /** Pieces that cross cover the same ground, so a side is never more than closed. */
  private Side side(double solidIn2, double grossIn2) {
    WindPanel panel = new WindPanel(Math.min(solidIn2, grossIn2), grossIn2);
    double forceLb =
        SideWind.on(panel, rules.pressurePsf(), rules.lattice(), rules.wall()).forceLb();
    return new Side(forceLb, solidIn2);
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

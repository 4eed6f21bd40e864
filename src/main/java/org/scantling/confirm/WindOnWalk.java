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
  private final WindFaces faces;
  private final Rules rules;

  /**
   * What closes the sides between two posts of a row.
   *
   * @param railDepthIn seen height of the rail, 0 for none
   * @param railMiddleIn how high its middle lies
   * @param pickets upright pieces in a bay, from the rail to the header
   * @param picketBreadthIn seen breadth of each
   */
  public record Sides(
      double railDepthIn, double railMiddleIn, double pickets, double picketBreadthIn) {
    double railTopIn() {
      return railMiddleIn + railDepthIn / 2;
    }
  }

  /**
   * @param pressurePsf velocity pressure at the top
   * @param lattice force coefficients of open frames
   * @param inLeaf how leaves fill the sides
   * @param bare how stems fill them in winter
   * @param shelter what one crossbeam takes off the next
   * @param wall what a side so closed that it is no open frame counts as
   * @param mat the climbers on the top
   */
  public record Rules(
      double pressurePsf,
      LatticeRule lattice,
      FoliageCover inLeaf,
      FoliageCover bare,
      Shelter shelter,
      WallRule wall,
      Mat mat) {}

  /**
   * Leaves and stems that lie on the top, whose edge stands in the wind.
   *
   * @param thickIn how thick they lie
   * @param inLeaf how leaves fill the top
   * @param bare how stems fill it in winter
   */
  public record Mat(double thickIn, FoliageCover inLeaf, FoliageCover bare) {}

  /**
   * @param shareRatio share of the full wind that is left in the lee of a crossbeam
   * @param reachDepths spacing over depth up to which there is a lee
   */
  public record Shelter(double shareRatio, double reachDepths) {}

  public WindOnWalk(Geometry geometry, Sides sides, Rules rules) {
    this.geometry = geometry;
    this.sides = sides;
    this.faces = new WindFaces(geometry, sides);
    this.rules = rules;
  }

  /**
   * Wind square to the walk, on its sides and on the leafy edge of its top. A picket leans with
   * half of its wind on the header and with the other on the rail.
   */
  public WindAcross onPostAcross() {
    WindFace face = sideFace();
    SideWind timber = on(face);
    FoliageWind leaves = leaves(face);
    LeafyEdge edge = new LeafyEdge(edge(), rules.mat().thickIn(), edgeAtIn());
    double timberLb = timber.forceLb() * face.topIn2() / face.solidIn2();
    double edgeLb = edge.wind().worstLb();
    double timberAtIn =
        (face.onHeaderIn2() * faces.headerMiddleIn() + face.endsIn2() * faces.crossbeamMiddleIn())
            / face.topIn2();
    SidePush push =
        new SidePush(
            timberLb + edgeLb,
            (timberLb * timberAtIn + edgeLb * edge.atIn()) / (timberLb + edgeLb),
            timber.forceLb() * face.uprightIn2() / face.solidIn2() + leaves.worstLb(),
            geometry.posts().heightIn());
    return new WindAcross(face, timber, leaves, edge, push);
  }

  /** The push of that. */
  public SidePush across() {
    return onPostAcross().push();
  }

  /**
   * Wind square to the walk on one rail and what hangs on it, strength level: the rail, and half of
   * what closes the bay, the other half of which hangs on the header.
   */
  public double onRailLb() {
    WindFace face = sideFace();
    double timberIn2 = face.railsIn2() + face.picketsIn2() / 2;
    double timberLb = on(face).forceLb() * timberIn2 / face.solidIn2();
    return (timberLb + leaves(face).worstLb() / 2) * geometry.plan().bayIn() / faces.tributaryIn();
  }

  /**
   * Wind square to the walk that a header takes, as far as it leans on one post, of what the push
   * on the post counts along its height: half of the leaves between it and the rail, and of the
   * pickets what a half is more than their share at the top. Strength level; none where there is no
   * rail, and all of it climbs on the posts.
   */
  public double hungOnHeaderLb() {
    if (!(sides.railDepthIn() > 0)) {
      return 0;
    }
    WindFace face = sideFace();
    double moreRatio = Math.max(0, 0.5 - face.picketTopRatio());
    double picketsLb = on(face).forceLb() * face.picketsIn2() / face.solidIn2();
    return moreRatio * picketsLb + leaves(face).worstLb() / 2;
  }

  /** Wind on the leaves or the stems between the timbers, as far as they lean on one post. */
  private FoliageWind leaves(WindFace face) {
    double closedIn2 = face.postsIn2() + face.railsIn2() + face.picketsIn2();
    double openIn2 = Math.max(0, faces.tributaryIn() * geometry.posts().heightIn() - closedIn2);
    return FoliageWind.on(openIn2, rules.pressurePsf(), rules.inLeaf(), rules.bare());
  }

  /**
   * Wind square to the walk on the edge of the climbers that lie on the top, as far as it leans on
   * one post.
   */
  private FoliageWind edge() {
    return onMat(rules.mat().thickIn() * faces.headerShareIn());
  }

  private FoliageWind onMat(double areaIn2) {
    Mat mat = rules.mat();
    return FoliageWind.on(areaIn2, rules.pressurePsf(), mat.inLeaf(), mat.bare());
  }

  /** Height of the middle of that edge: climbers lie half between the crossbeams, half on them. */
  private double edgeAtIn() {
    return geometry.overallHeightIn();
  }

  /**
   * Wind along the walk on the end of those climbers, shared by all posts. The end crossbeam hides
   * what lies between the crossbeams, as far down as it is deep, and takes its own wind there; what
   * lies on the crossbeams stands over it, and what hangs out below stands under it.
   */
  private FoliageWind end() {
    double halfIn = rules.mat().thickIn() / 2;
    double hangsIn = Math.max(0, halfIn - geometry.crossbeams().depthIn());
    return onMat((halfIn + hangsIn) * geometry.crossbeamLengthIn());
  }

  /** Height of the middle of what stands over the end crossbeam, taken for what hangs out too. */
  private double endAtIn() {
    return geometry.overallHeightIn() + rules.mat().thickIn() / 2 / 2;
  }

  /** Wind along the walk, on the crossbeams, the posts and the leafy end of the top. */
  public WindAlong onPostAlong() {
    WindFace gable = gableFace();
    SideWind timber = on(gable);
    WindAlong.Beams beams = WindAlong.Beams.of(leeRatio(), geometry.crossbeamCount());
    LeafyEdge edge = new LeafyEdge(end(), rules.mat().thickIn(), endAtIn());
    double timberLb = onCrossbeamLb() * beams.windwardCount() / geometry.postCount();
    double endLb = edge.wind().worstLb() / geometry.postCount();
    SidePush push =
        new SidePush(
            timberLb + endLb,
            (timberLb * faces.crossbeamMiddleIn() + endLb * edge.atIn()) / (timberLb + endLb),
            timber.forceLb() * gable.onePostIn2() / gable.solidIn2(),
            geometry.posts().heightIn());
    return new WindAlong(gable, timber, beams, edge, geometry.postCount(), push);
  }

  /** The push of that. */
  public SidePush along() {
    return onPostAlong().push();
  }

  /**
   * The posts of the row that stands higher.
   *
   * @param onShorter the same wind as it comes to them
   */
  public HighRow highRow(WindOnWalk onShorter) {
    return new HighRow(
        SharedPush.of(across(), onShorter.across()), SharedPush.of(along(), onShorter.along()));
  }

  /** Wind along the walk on one crossbeam in full wind, strength level. */
  public double onCrossbeamLb() {
    WindFace gable = gableFace();
    return on(gable).forceLb() * gable.topIn2() / gable.solidIn2();
  }

  /** The part of a side that leans on the hardest-pressed post. */
  private WindFace sideFace() {
    return faces.side();
  }

  /** One crossbeam with its two posts, seen along the walk. */
  private WindFace gableFace() {
    return faces.gable();
  }

  /** Share of the full wind that each crossbeam behind the first takes. */
  private double leeRatio() {
    double apartDepths = geometry.crossbeamSpacingIn() / geometry.crossbeams().depthIn();
    return apartDepths <= rules.shelter().reachDepths() ? rules.shelter().shareRatio() : 1;
  }

  /**
   * What the wind does to the timber of a face. Pieces that cross cover the same ground, so a face
   * is never more than closed.
   */
  private SideWind on(WindFace face) {
    double grossIn2 = face.grossIn2();
    WindPanel panel = new WindPanel(Math.min(face.solidIn2(), grossIn2), grossIn2);
    return SideWind.on(panel, rules.pressurePsf(), rules.lattice(), rules.wall());
  }
}

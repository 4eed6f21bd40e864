package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.concurrent.Lazy;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;

/** What the joints of a walk must hold, with posts in the ground or on brackets. */
public final class JointForces {
  private final HeaderChecks headers;
  private final Material header;
  private final PostChecks.Standing wind;
  private final double windOnCrossbeamLb;
  private final double hungLb;
  private final Optional<BracedWalk> braced;
  private final Lazy<List<JointForce>> onPost = new Lazy<>(this::worstOnPost);
  private final Lazy<Map<LoadCombination, Double>> headerShear = new Lazy<>(this::worstShear);

  /**
   * @param headers the headers with their loads
   * @param header the header that was decided
   * @param wind what the wind does to one post
   * @param windOnCrossbeamLb wind along the walk on one crossbeam, strength level
   */
  public JointForces(
      HeaderChecks headers, Material header, PostChecks.Standing wind, double windOnCrossbeamLb) {
    this.headers = headers;
    this.header = header;
    this.wind = wind;
    this.windOnCrossbeamLb = windOnCrossbeamLb;
    this.hungLb = 0;
    this.braced = Optional.empty();
  }

  private JointForces(JointForces plain, double hungLb, Optional<BracedWalk> walk) {
    this.headers = plain.headers;
    this.header = plain.header;
    this.wind = plain.wind;
    this.windOnCrossbeamLb = plain.windOnCrossbeamLb;
    this.hungLb = hungLb;
    this.braced = walk;
  }

  /** The same joints where braces pull and push at them too. */
  public JointForces in(BracedWalk walk) {
    return new JointForces(this, hungLb, Optional.of(walk));
  }

  /**
   * The same joints where pickets and leaves lean on the header.
   *
   * @param moreLb wind on them across the walk, as far as it leans on one post, strength level
   */
  public JointForces hung(double moreLb) {
    return new JointForces(this, moreLb, braced);
  }

  /** Wood of a header on top that a fastener goes through before it reaches the post. */
  double headerOverPostIn() {
    Geometry.Headers on = headers.geometry().headers();
    return on.depthIn() - on.notchIn();
  }

  /** One crossbeam on one header: what lifts it, and the wind on its face. */
  List<JointForce> onCrossbeam() {
    List<JointForce> forces = new ArrayList<>();
    forces.add(CrossbeamForce.lifting(headers.eachCrossbeam(), windOnCrossbeamLb).onJoint());
    braced.ifPresent(walk -> braced(forces, walk));
    return forces;
  }

  /** Crossbeams that stand over posts hold the braces too. */
  private static void braced(List<JointForce> forces, BracedWalk walk) {
    for (BracedCase each : walk.across().cases()) {
      for (int post : each.reach().posts()) {
        BracedPostForces head = each.on(post);
        double upLb = head.headPullLb() + each.onPostLb();
        forces.add(JointForce.of(each.combination(), upLb, head.headSideLb()));
      }
    }
  }

  /**
   * One header on one post, of a pair its harder worked board on the bolts of its side; wind across
   * the walk presses paired boards flat on it.
   */
  List<JointForce> onPost() {
    return onPost.get();
  }

  private List<JointForce> worstOnPost() {
    boolean paired = headers.geometry().headers().paired();
    double alongLb = wind.mostTopLb(FootPush.Way.ALONG);
    double share = headers.boardShareRatio();
    double sideLb = paired ? share * alongLb : Math.max(onHeadLb(), alongLb);
    List<JointForce> forces = new ArrayList<>();
    for (HeaderChecks.PostLoad each : headers.ofBoardOnPosts(header)) {
      double pushedLb = each.combination().factor(LoadKind.WIND) * sideLb;
      forces.add(new JointForce(each.combination(), each.downLb(), 0, pushedLb));
      forces.add(new JointForce(each.combination(), 0, each.upLb(), pushedLb));
    }
    braced.ifPresent(
        walk -> {
          heads(forces, walk.along(), share, 1, 0);
          heads(forces, walk.across(), share, paired ? 0 : 1, hungLb);
        });
    return forces;
  }

  /**
   * The end of one header piece on its post; none where no header is cut. Pushed along the walk,
   * the piece that is pressed towards the cut holds alone: bolts this near to an end hold nothing
   * that pulls towards it. Where braces act too, one end is given all that the whole joint has.
   */
  List<JointForce> onCutEnd() {
    List<HeaderChecks.PostLoad> ends = headers.onCutEnds(header);
    if (ends.isEmpty() || braced.isPresent()) {
      return ends.isEmpty() ? List.of() : onPost();
    }
    double alongLb = wind.mostTopLb(FootPush.Way.ALONG);
    boolean paired = headers.geometry().headers().paired();
    double sideLb =
        paired ? headers.boardShareRatio() * alongLb : Math.max(onHeadLb() / 2, alongLb);
    List<JointForce> forces = new ArrayList<>();
    for (HeaderChecks.PostLoad each : ends) {
      double pushedLb = each.combination().factor(LoadKind.WIND) * sideLb;
      forces.add(new JointForce(each.combination(), each.downLb(), 0, pushedLb));
      forces.add(new JointForce(each.combination(), 0, each.upLb(), pushedLb));
    }
    return forces;
  }

  /** Wind across the walk that a header on top brings to its post. */
  private double onHeadLb() {
    return wind.mostTopLb(FootPush.Way.ACROSS) + hungLb;
  }

  /** The frame has what leans on the header spread along its posts, so it is added here. */
  private static void heads(
      List<JointForce> forces, BracedWay way, double share, double sideShare, double leansLb) {
    for (BracedCase each : way.cases()) {
      for (int post : each.reach().posts()) {
        BracedPostForces head = each.on(post);
        double leaningLb = each.combination().factor(LoadKind.WIND) * leansLb;
        forces.add(
            JointForce.of(
                each.combination(),
                share * head.headPullLb(),
                share * sideShare * (Math.abs(head.headSideLb()) + leaningLb)));
      }
    }
  }

  /** Shear in the header beside a post, of a pair in its harder worked board. */
  Map<LoadCombination, Double> headerShear() {
    return headerShear.get();
  }

  private Map<LoadCombination, Double> worstShear() {
    Map<LoadCombination, Double> shear = new EnumMap<>(headers.shearLb(header));
    braced.ifPresent(walk -> braced(shear, walk, headers.boardShareRatio()));
    return shear;
  }

  private static void braced(Map<LoadCombination, Double> shear, BracedWalk walk, double share) {
    for (BracedCase each : walk.along().cases()) {
      for (String piece : each.reach().pieces()) {
        double shearLb = share * Math.abs(each.all().member(piece).largestShear().amount());
        shear.merge(each.combination(), shearLb, Math::max);
      }
    }
  }
}

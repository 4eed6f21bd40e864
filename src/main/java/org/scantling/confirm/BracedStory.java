package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.MemberResult;
import org.scantling.mechanics.NodeForce;
import org.scantling.mechanics.Peak;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BucklingLength;
import org.scantling.timber.Rectangle;

/** Which post of a braced walk is worked hardest, and what the frame came to there. */
public final class BracedStory {
  private final BracedWalk walk;
  private final PostChecks.Standing standing;
  private final Limits limits;
  private final BracedRules rules;

  public BracedStory(
      BracedWalk walk, PostChecks.Standing standing, Limits limits, BracedRules rules) {
    this.walk = walk;
    this.standing = standing;
    this.limits = limits;
    this.rules = rules;
  }

  /** The post on which pressure and bending together are worst in a combination. */
  public Optional<BracedScene> hardest(LoadCombination combination) {
    List<BracedScene> scenes = new ArrayList<>();
    look(scenes, combination, false);
    look(scenes, combination, true);
    return scenes.stream().max(Comparator.comparingDouble(scene -> scene.post().ratio()));
  }

  private void look(List<BracedScene> scenes, LoadCombination combination, boolean along) {
    BracedPlane plane = way(along).plane();
    double crossInLb = stillMoment(combination, !along);
    for (BracedCase each : way(along).cases()) {
      if (each.combination() == combination) {
        for (int post : each.reach().posts()) {
          scenes.add(new View(plane, each, post, along).scene(crossInLb));
        }
      }
    }
  }

  private double stillMoment(LoadCombination combination, boolean along) {
    double mostInLb = 0;
    for (BracedCase each : way(along).cases()) {
      if (each.combination() == combination) {
        for (int post : each.reach().posts()) {
          mostInLb = Math.max(mostInLb, each.stillOn(post).momentInLb());
        }
      }
    }
    return mostInLb;
  }

  private BracedWay way(boolean along) {
    return along ? walk.along() : walk.across();
  }

  /** One post in one case, seen with the wind from the front. */
  private final class View {
    private final BracedPlane plane;
    private final BracedCase laid;
    private final FrameResult all;
    private final int index;
    private final boolean along;
    private final int side;

    View(BracedPlane plane, BracedCase laid, int index, boolean along) {
      this.plane = plane;
      this.laid = laid;
      this.all = laid.all();
      this.index = index;
      this.along = along;
      double heldLb = 0;
      for (int post = 0; post < plane.postCount(); post++) {
        heldLb += all.reaction(BracedPlane.foot(post)).xLb();
      }
      this.side = heldLb > 0 ? -1 : 1;
    }

    BracedScene scene(double crossInLb) {
      SidePush push = along ? standing.along() : standing.across();
      double windFactor = laid.combination().factor(LoadKind.WIND);
      double grown = windFactor > 0 ? windFactor * laid.sway().amplifierFactor() : 0;
      List<BracedScene.Foot> feet = new ArrayList<>();
      for (int post = 0; post < plane.postCount(); post++) {
        NodeForce foot = all.reaction(BracedPlane.foot(post));
        feet.add(new BracedScene.Foot(-side * foot.xLb(), foot.yLb()));
      }
      MemberResult shaft = all.member(BracedPlane.shaft(index));
      MemberResult neck = all.member(BracedPlane.neck(index));
      double left = plane.hasLeft(index) ? brace(BracedPlane.left(index)) : 0;
      double right = plane.hasRight(index) ? brace(BracedPlane.right(index)) : 0;
      double leftLb = -side * left;
      double rightLb = side * right;
      boolean byLeft = plane.hasLeft(index) && (!plane.hasRight(index) || leftLb >= rightLb);
      return new BracedScene(
          post(crossInLb),
          new BracedScene.Place(index, plane.postCount(), plane.heightIn(), walk.timbers().legIn()),
          new BracedScene.Wind(
              windFactor,
              laid.sway().verticalLb(),
              laid.sway().criticalLb(),
              grown * push.topLb() * push.topAtIn() / push.heightIn(),
              grown * push.spreadLb() / plane.heightIn()),
          feet,
          Math.abs(shaft.momentInLb(shaft.lengthIn())),
          mostAt(shaft, neck),
          new BracedScene.Braces(
              byLeft ? leftLb : rightLb,
              byLeft ? rightLb : leftLb,
              (byLeft ? left : right) > 0,
              (left + right) / Math.sqrt(2)),
          -shaft.mostCompression().amount() >= -neck.mostCompression().amount());
    }

    private double mostAt(MemberResult shaft, MemberResult neck) {
      Peak below = shaft.largestMoment();
      Peak above = neck.largestMoment();
      return Math.abs(below.amount()) >= Math.abs(above.amount()) * (1 - 1e-9)
          ? below.atIn()
          : shaft.lengthIn() + above.atIn();
    }

    private double brace(String name) {
      MemberResult brace = all.member(name);
      return brace.axialLb(brace.lengthIn() / 2);
    }

    private PostScene post(double crossInLb) {
      BracedPostForces forces = laid.on(index);
      Rectangle section = walk.timbers().post().section();
      AdjustedValues values =
          walk.timbers().post().lasting(limits.duration().of(laid.combination()));
      BucklingLength length = new BucklingLength(rules.heldFactor(), plane.heightIn());
      BracedMember member = new BracedMember(section, length, limits.straightnessFactor(), values);
      return new PostScene(
          laid.combination(),
          section,
          PostForce.solved(forces.pressedLb()),
          PostMoment.solved(forces.momentInLb()),
          crossInLb,
          along,
          member.column(forces.pressedLb()),
          member.stability(),
          rules.eccentricityRatio() * section.depthIn(),
          values);
    }
  }
}

package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.MemberResult;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BucklingLength;
import org.scantling.timber.Column;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Shear;

/**
 * One post on a bracket, held upright by knee braces: crushing and slenderness between bracket and
 * beam, bending where the brace meets it and wherever it is worst, both together, the housing of a
 * rail, shear, and the sway of the whole walk.
 *
 * <p>Sway of the walk is in the forces already (see {@link BracedCases}), so the post itself counts
 * as held at both ends.
 */
public final class BracedPostChecks {
  private final BracedWalk walk;
  private final PostChecks.Standing standing;
  private final Limits limits;
  private final BracedRules rules;
  private final CheckEnvelope post;
  private final CheckEnvelope brace;

  /**
   * @param standing the wind on one post, and the housing of a rail
   */
  public BracedPostChecks(
      BracedWalk walk,
      PostChecks.Standing standing,
      Limits limits,
      BracedRules rules,
      Function<String, Source> sources) {
    this.walk = walk;
    this.standing = standing;
    this.limits = limits;
    this.rules = rules;
    this.post = new CheckEnvelope("post", limits, sources);
    this.brace = new CheckEnvelope("brace", limits, sources);
    check(walk.across(), stillMoments(walk.along()));
    check(walk.along(), stillMoments(walk.across()));
  }

  /** Every check of the post as tried, each with its worst combination. */
  public List<Checked> list() {
    List<Checked> all = new ArrayList<>(post.list());
    all.addAll(brace.list());
    return all;
  }

  /** Bending from weight alone in the plane that the wind leaves in peace. */
  private static Map<LoadCombination, Double> stillMoments(BracedWay way) {
    Map<LoadCombination, Double> moments = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      for (int i : each.reach().posts()) {
        double momentInLb = each.stillOn(i).momentInLb();
        moments.merge(each.combination(), momentInLb, Math::max);
      }
    }
    return moments;
  }

  private void check(BracedWay way, Map<LoadCombination, Double> crossInLb) {
    BracedPlane plane = way.plane();
    for (BracedCase each : way.cases()) {
      for (int i : each.reach().posts()) {
        double cross = crossInLb.getOrDefault(each.combination(), 0.0);
        member(plane, each, each.on(i), cross);
        housing(plane, each, i);
      }
      sway(plane, each);
    }
  }

  private void member(
      BracedPlane plane, BracedCase each, BracedPostForces forces, double crossInLb) {
    LoadCombination combination = each.combination();
    Rectangle section = walk.timbers().post().section();
    BracedMember member = member(plane, combination);
    Column column = member.column(forces.pressedLb());
    post.add("compression", combination, column.check(), Unit.PSI);
    post.addLasting("slenderness", combination, column.governing().check(), Unit.RATIO);
    post.add("bending", combination, member.bending(forces.momentInLb()).check(), Unit.PSI);
    double offsetIn = rules.eccentricityRatio() * section.depthIn();
    post.add(
        "combined",
        combination,
        worse(
            member.combined(
                new BracedMember.Forces(
                    -forces.pressedLb(), forces.momentInLb(), crossInLb, offsetIn)),
            member.combined(
                new BracedMember.Forces(forces.pulledLb(), forces.momentInLb(), crossInLb, 0))),
        Unit.RATIO);
    post.add(
        "shear",
        combination,
        Shear.of(forces.shearLb(), section, member.values().shear()).check(),
        Unit.PSI);
    // The bolt of the brace in the other plane runs across this one and takes its hole off the
    // breadth.
    Rectangle bored = new Rectangle(section.breadthIn() - rules.holeIn(), section.depthIn());
    BracedMember net =
        new BracedMember(bored, member.length(), member.straightnessFactor(), member.values());
    brace.add("post-bending", combination, net.bending(forces.kneeMomentInLb()).check(), Unit.PSI);
  }

  private void housing(BracedPlane plane, BracedCase each, int index) {
    boolean housed = standing.housingDepthIn() > 0;
    for (int faces = 1; housed && faces <= standing.housedFaces(); faces++) {
      post.add("rail-notch", each.combination(), atHousing(plane, each, index, faces), Unit.RATIO);
    }
  }

  /** Pressed, or pulled, and bent on what the housing of a rail leaves. */
  private Check atHousing(BracedPlane plane, BracedCase each, int index, int faces) {
    boolean along = plane == walk.along().plane();
    BracedMember member = member(plane, each.combination());
    Rectangle left = standing.left(member.section(), faces, along);
    BracedMember net =
        new BracedMember(left, member.length(), member.straightnessFactor(), member.values());
    // A housing at the knee, or over it, is bent no harder than the post is at the knee.
    MemberResult shaft = each.all().member(BracedPlane.shaft(index));
    double momentInLb = shaft.momentInLb(Math.min(standing.housingAtIn(), shaft.lengthIn()));
    BracedPostForces forces = each.on(index);
    NotchScene.Offsets offsets =
        NotchScene.Offsets.of(
            standing, faces, along, rules.eccentricityRatio() * member.section().depthIn());
    NotchScene pressed =
        new NotchScene(
            each.combination(),
            new NotchScene.Housing(faces, standing.housingDepthIn(), standing.housingAtIn()),
            left,
            PostForce.solved(forces.pressedLb()),
            along ? standing.along() : standing.across(),
            momentInLb,
            along,
            offsets,
            member.column(forces.pressedLb()),
            net.bending(momentInLb),
            net.stability());
    return worse(
        pressed.combined().check(),
        net.combined(new BracedMember.Forces(forces.pulledLb(), momentInLb, 0, 0)));
  }

  private void sway(BracedPlane plane, BracedCase each) {
    brace.addLasting(
        "sway",
        each.combination(),
        new Check(each.sway().verticalLb(), rules.swayShareRatio() * each.sway().criticalLb()),
        Unit.POUND);
    if (each.driftIn() > 0) {
      post.addLasting(
          "drift",
          each.combination(),
          new Check(each.driftIn(), limits.driftShareRatio() * plane.heightIn()),
          Unit.INCH);
    }
  }

  private BracedMember member(BracedPlane plane, LoadCombination combination) {
    Material material = walk.timbers().post();
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    BucklingLength length = new BucklingLength(rules.heldFactor(), plane.heightIn());
    return new BracedMember(material.section(), length, limits.straightnessFactor(), values);
  }

  private static Check worse(Check one, Check other) {
    return one.ratio() >= other.ratio() ? one : other;
  }
}

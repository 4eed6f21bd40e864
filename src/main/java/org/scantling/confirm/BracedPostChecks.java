package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameResult;
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
    FrameResult looked = null;
    for (BracedCase each : way.cases()) {
      // Without its push the wind from the left is the wind from the right.
      for (int i : each.still() == looked ? List.<Integer>of() : each.reach().posts()) {
        double momentInLb = each.stillOn(i).momentInLb();
        moments.merge(each.combination(), momentInLb, Math::max);
      }
      looked = each.still();
    }
    return moments;
  }

  private void check(BracedWay way, Map<LoadCombination, Double> crossInLb) {
    BracedPlane plane = way.plane();
    boolean along = plane == walk.along().plane();
    Map<LoadCombination, Sections> sections = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      Sections post =
          sections.computeIfAbsent(
              each.combination(), combination -> sections(plane, along, combination));
      for (int i : each.reach().posts()) {
        double cross = crossInLb.getOrDefault(each.combination(), 0.0);
        member(post, each, each.on(i), cross);
        housing(post, along, each, i);
      }
      sway(plane, each);
    }
  }

  /**
   * The post in one combination.
   *
   * @param whole between bracket and beam
   * @param bored across by the bolt of the brace in the other plane, which takes its hole off the
   *     breadth
   * @param housed what the housings of rails leave, in one face and so on
   */
  private record Sections(BracedMember whole, BracedMember bored, List<BracedMember> housed) {}

  private Sections sections(BracedPlane plane, boolean along, LoadCombination combination) {
    BracedMember whole = member(plane, combination);
    Rectangle section = whole.section();
    List<BracedMember> housed = new ArrayList<>();
    boolean railed = standing.housingDepthIn() > 0;
    for (int faces = 1; railed && faces <= standing.housedFaces(); faces++) {
      housed.add(whole.left(standing.left(section, faces, along)));
    }
    Rectangle bored = new Rectangle(section.breadthIn() - rules.holeIn(), section.depthIn());
    return new Sections(whole, whole.left(bored), housed);
  }

  private void member(
      Sections sections, BracedCase each, BracedPostForces forces, double crossInLb) {
    LoadCombination combination = each.combination();
    BracedMember member = sections.whole();
    Rectangle section = member.section();
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
    brace.add(
        "post-bending",
        combination,
        sections.bored().bending(forces.kneeMomentInLb()).check(),
        Unit.PSI);
  }

  private void housing(Sections sections, boolean along, BracedCase each, int index) {
    for (int faces = 1; faces <= sections.housed().size(); faces++) {
      Check housed = atHousing(sections, along, each, index, faces);
      post.add("rail-notch", each.combination(), housed, Unit.RATIO);
    }
  }

  /** Pressed, or pulled, and bent on what the housing of a rail leaves. */
  private Check atHousing(Sections sections, boolean along, BracedCase each, int index, int faces) {
    BracedMember member = sections.whole();
    BracedMember net = sections.housed().get(faces - 1);
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
            net.section(),
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

package org.scantling.judge;

import java.util.List;
import java.util.stream.IntStream;

/** Posts in the ground as cantilevers, and their footings. */
final class PostJudge {
  private final Design design;
  private final Stock stock;
  private final Wood wood;
  private final HeaderJudge header;
  private final List<Push> acrossEndAndMiddle;
  private final Push along;
  private final double heightIn;
  private final double ownLb;
  private final SoftBase base;
  private final double effectiveIn;

  /** The posts of the lower row, which are the longer ones, or of all where both stand alike. */
  static PostJudge lower(Design design, Rows rows, HeaderJudge header) {
    return new PostJudge(
        design,
        header,
        design.postHeightIn(),
        List.of(rows.across(true), rows.across(false)),
        rows.along());
  }

  /** The shorter posts of the row on the higher ground. */
  static PostJudge higher(Design design, Rows rows, HeaderJudge header) {
    return new PostJudge(
        design,
        header,
        design.postHeightIn() - design.dropIn(),
        List.of(rows.uphillAcross(true), rows.uphillAcross(false)),
        rows.uphillAlong());
  }

  private PostJudge(
      Design design,
      HeaderJudge header,
      double heightIn,
      List<Push> acrossEndAndMiddle,
      Push along) {
    this.design = design;
    this.header = header;
    this.heightIn = heightIn;
    this.acrossEndAndMiddle = acrossEndAndMiddle;
    this.along = along;
    stock = design.need("post").stock();
    wood = design.need("post").wood();
    ownLb = design.need("post").ownLbPerIn() * heightIn;
    base = SoftBase.of(design);
    effectiveIn = 2.1 * base.softer(wood.bucklingPsi() * stock.inertiaIn4(), heightIn) * heightIn;
  }

  void judge(Findings findings) {
    double effective = effectiveIn;
    findings.add("post.slenderness", Combination.DEAD, effective / stock.thicknessIn(), 50);
    for (int post = 0; post < header.posts(); post++) {
      boolean end = post == 0 || post == header.posts() - 1;
      for (Combination load : Combination.ALL) {
        pressed(findings, load, post, effective);
        uplift(findings, load, post);
        if (load.wind() > 0) {
          bent(findings, load, post, end, acrossEndAndMiddle.get(end ? 0 : 1), true);
          bent(findings, load, post, end, along, false);
        }
      }
    }
  }

  private double axialLb(int post, Combination load) {
    return load.up()
        ? Math.max(0, -header.liftLb(post, load) + load.dead() * ownLb)
        : header.pressLb(post, load) + load.dead() * ownLb;
  }

  /** One post is worked under both: the load of the hardest pressed and the wind of any. */
  private double mostAxialLb(Combination load) {
    return IntStream.range(0, header.posts())
        .mapToDouble(post -> axialLb(post, load))
        .max()
        .orElseThrow();
  }

  private void pressed(Findings findings, Combination load, int post, double effective) {
    double axial = axialLb(post, load);
    findings.add(
        "post.compression",
        load,
        axial / stock.areaIn2(),
        wood.columnPsi(effective, stock.thicknessIn(), load.duration()));
    double areaFt2 = Math.PI / 4 * Math.pow(design.footing("diameterIn") / 12, 2);
    double concrete =
        design.concrete()
            ? (Tables.value("thumb", "footing.concrete-weight")
                    - Tables.value("thumb", "footing.soil-weight"))
                * design.footing("depthIn")
                / 12
            : 0;
    findings.add(
        "footing.bearing",
        load,
        axial / areaFt2 + concrete,
        Tables.number(soil(), "vertical_bearing_psf"));
  }

  private java.util.Map<String, String> soil() {
    return Tables.row("soils", design.criterionText("soil"));
  }

  private void bent(
      Findings findings, Combination load, int post, boolean end, Push push, boolean across) {
    double needIn = neededIn(push);
    double upIn = push.momentInLb() / push.totalLb();
    boolean tamped = !design.concrete();
    double below = tamped ? Pole.momentRatio(needIn, upIn) : 1;
    double moment = load.wind() * push.momentInLb() * below;
    double fb = moment / stock.sectionIn3();
    double allowed = wood.bendingPsi() * load.duration();
    findings.add("post.bending", load, fb, allowed);
    double axial = axialLb(post, load);
    combined(findings, "post.combined", load, mostAxialLb(load), fb, stock.areaIn2(), allowed);
    housed(findings, load, axial, push, end, across, allowed);
    double shear = load.wind() * push.totalLb() * (tamped ? Pole.shearRatio(needIn, upIn) : 1);
    findings.add(
        "post.shear", load, 1.5 * shear / stock.areaIn2(), wood.shearPsi() * load.duration());
    if (load == Combination.LIFT) {
      findings.add("footing.embedment", load, needIn, design.footing("depthIn"));
    }
    if (!load.up()) {
      double stiff = wood.elasticityPsi() * stock.inertiaIn4();
      double grown = 1 / (1 - axial / stock.areaIn2() / wood.eulerPsi(effectiveIn, side()));
      double turn = base.turned(push.momentInLb()) * heightIn;
      double bow = load.wind() * (push.headSag() / stiff + turn) * grown;
      findings.add("post.drift", load, bow + turned(load, push, upIn), heightIn / 60);
    }
    if (base.there()) {
      onBase(findings, load, post, axial, push);
    }
  }

  /** The load stands a sixth of the breadth off the middle and goes as far as the head may. */
  private void onBase(Findings findings, Combination load, int post, double axial, Push push) {
    base.judge(
        findings,
        load,
        load.wind() * push.momentInLb() + axial * (side() / 6 + heightIn / 60),
        Math.max(0, header.edgeLiftLb(post, load)),
        load.wind() * push.totalLb());
  }

  /** How far the head moves because the foot turns in soil that stiffens with depth. */
  private double turned(Combination load, Push push, double upIn) {
    String stiffening = soil().getOrDefault("stiffening_lb_per_in3", "");
    double depth = design.footing("depthIn");
    return stiffening.isEmpty()
        ? 0
        : load.wind()
            * push.totalLb()
            / (Tables.number(stiffening) * Pole.hold(depth, upIn))
            * (Pole.pivot(depth, upIn) + heightIn);
  }

  private double side() {
    return stock.thicknessIn();
  }

  private double neededIn(Push push) {
    double width =
        design.concrete()
            ? design.footing("diameterIn") / 12
            : Math.sqrt(2) * stock.thicknessIn() / 12;
    double soil = Tables.number(soil(), "lateral_bearing_psf_per_ft") * (design.doubled() ? 2 : 1);
    return 12
        * Pole.depthFt(0.6 * push.totalLb(), push.momentInLb() / push.totalLb() / 12, width, soil);
  }

  /**
   * NDS 3.9.2 with the load off centre by a sixth of the breadth (15.4.1). What is cut away counts
   * in the stresses; the post as a whole leans with its whole section.
   */
  private void combined(
      Findings findings,
      String check,
      Combination load,
      double axialLb,
      double fb,
      double areaIn2,
      double allowed) {
    double fc = axialLb / areaIn2;
    double euler = wood.eulerPsi(effectiveIn, side());
    double column = wood.columnPsi(effectiveIn, side(), load.duration());
    double leaning = axialLb / stock.areaIn2() / euler;
    double ratio =
        Math.pow(fc / column, 2) + (fb + fc * (1 + 0.234 * leaning)) / (allowed * (1 - leaning));
    findings.add(check, load, ratio, 1);
  }

  /**
   * The section beside the housings of the rails, at the lower edge of the cut. A housing in one
   * face moves the middle of what is left off the load, along the walk, whichever way wind blows.
   */
  private void housed(
      Findings findings,
      Combination load,
      double axialLb,
      Push push,
      boolean end,
      boolean across,
      double allowed) {
    if (design.member("rail").isEmpty()) {
      return;
    }
    double railIn = design.need("rail").stock().thicknessIn();
    double deepIn = design.need("post").notchIn() * (end ? 1 : 2);
    double atIn =
        Tables.number(design.decided("rail.height")) - design.need("rail").stock().depthIn() / 2;
    double b = stock.thicknessIn();
    double cut = Math.min(b, (b + railIn) / 2);
    double area = b * b - deepIn * cut;
    double section = across ? sideways(b, cut, deepIn) : lengthways(b, cut, deepIn, end);
    double shiftIn = end ? deepIn * cut * (b - deepIn) / 2 / area : 0;
    double fb =
        load.wind() * push.momentInLb(atIn) / section
            + axialLb * shiftIn / lengthways(b, cut, deepIn, end);
    combined(findings, "post.rail-notch", load, axialLb, fb, area, allowed);
  }

  /** Bent across the walk: the cut makes a part of the depth narrower, or is left out whole. */
  private static double sideways(double b, double cut, double deep) {
    double area = b * b - deep * cut;
    double centre = (b * b * b / 2 - deep * cut * cut / 2) / area;
    double inertia =
        Math.pow(b, 4) / 12
            + b * b * Math.pow(b / 2 - centre, 2)
            - deep * Math.pow(cut, 3) / 12
            - deep * cut * Math.pow(cut / 2 - centre, 2);
    double elastic = inertia / Math.max(centre, b - centre);
    return Math.max(elastic, (b - deep) * b * b / 6);
  }

  /** Bent along the walk: a strip keeps the whole depth, or is left out too. */
  private static double lengthways(double b, double cut, double deep, boolean end) {
    double left = b - deep;
    double strip = b - cut;
    double without = b * left * left / 6;
    if (strip <= 0) {
      return without;
    }
    double centre =
        end ? (strip * b * b / 2 + cut * left * left / 2) / (strip * b + cut * left) : 0;
    double inertia = strip * b * b * b / 12 + cut * Math.pow(left, 3) / 12;
    if (end) {
      inertia +=
          strip * b * Math.pow(b / 2 - centre, 2) + cut * left * Math.pow(left / 2 - centre, 2);
    }
    return Math.max(without, inertia / (end ? Math.max(centre, b - centre) : b / 2));
  }

  private double shortestIn() {
    return design.all("post").stream().mapToDouble(Design.Member::lengthIn).min().orElseThrow();
  }

  private void uplift(Findings findings, Combination load, int post) {
    double lift = header.edgeLiftLb(post, load);
    if (lift <= 0) {
      return;
    }
    double depthFt = design.footing("depthIn") / 12;
    double breadthFt = base.there() ? 0 : side() / 12;
    double hold = load.dead() * design.need("post").ownLbPerIn() * shortestIn();
    double soil = Tables.value("thumb", "footing.soil-weight");
    if (design.concrete()) {
      double area =
          Math.PI / 4 * Math.pow(design.footing("diameterIn") / 12, 2) - breadthFt * breadthFt;
      hold += load.dead() * area * depthFt * Tables.value("thumb", "footing.concrete-weight");
    } else {
      double grip = Tables.value("thumb", "footing.grip-share") * soil * depthFt / 2;
      hold += grip * 4 * breadthFt * depthFt;
    }
    findings.add("footing.uplift", load, lift, hold);
  }
}

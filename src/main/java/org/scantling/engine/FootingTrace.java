package org.scantling.engine;

import static org.scantling.engine.CalculationSteps.feet;
import static org.scantling.engine.CalculationSteps.moment;
import static org.scantling.engine.CalculationSteps.perInch;
import static org.scantling.engine.CalculationSteps.pounds;
import static org.scantling.reasons.Question.FOOTING_DEPTH;
import static org.scantling.reasons.Question.HOLE_DIAMETER;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.FootingWork;
import org.scantling.confirm.SidePush;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.VerticalBearing;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/** How deep a post or a pier stands against the push, what it presses with and what holds it. */
final class FootingTrace {
  /** Deeper soil pushes back no harder. */
  private static final double DEEPEST_COUNTED_IN = 144;

  private final CheckContext context;
  private final CalculationSteps steps;
  private final FootingWork work;
  private final FootingWork.Foot foot;
  private final double depthIn;
  private final double holeIn;

  FootingTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.work = context.footing();
    this.foot = context.foot();
    this.depthIn = context.answers().number(FOOTING_DEPTH);
    this.holeIn = context.answers().number(HOLE_DIAMETER);
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    for (Checked check : context.footingChecks(depthIn, holeIn)) {
      switch (check.id()) {
        case "footing.embedment" -> list.addAll(embedment(check));
        case "footing.bearing" -> list.addAll(bearing(check));
        case "footing.uplift" -> list.addAll(uplift(check));
        default -> {}
      }
    }
    return list;
  }

  private List<CalculationStep> embedment(Checked check) {
    NonConstrainedEmbedment needed = work.embedment(holeIn);
    List<CalculationStep> list = new ArrayList<>();
    if (!(needed.depthIn() > 0)) {
      return list;
    }
    if (!context.onBrackets()) {
      list.addAll(push(check, needed));
    }
    Measure push = pounds(needed.load().forceLb());
    if (!foot.concrete()) {
      list.add(
          step(
              check,
              "width",
              feet(needed.width().widthIn()),
              Evidence.saw("breadth", feet(foot.postBreadthIn()))));
    }
    double countedIn = Math.min(needed.depthIn(), DEEPEST_COUNTED_IN);
    list.add(
        step(
            check,
            "soil",
            Measure.psf(needed.s1Psf()),
            Evidence.saw("lateral", new Measure(foot.soil().lateralPsfPerFt(), Unit.PSF_PER_FOOT))
                .and("increase", Measure.count(foot.isolatedFactor()))
                .and("counted", feet(countedIn))));
    Evidence soil = Evidence.saw("soil", Measure.psf(needed.s1Psf()));
    Measure width = feet(needed.width().widthIn());
    Measure length = feet(needed.aIn());
    if (context.onBrackets()) {
      list.add(step(check, "length-pier", length, soil.and("solved", push).and("hole", width)));
    } else if (foot.concrete()) {
      list.add(step(check, "length-hole", length, soil.and("push", push).and("hole", width)));
    } else {
      list.add(step(check, "length", length, soil.and("push", push).and("width", width)));
    }
    list.add(
        step(
            check,
            "depth",
            feet(needed.depthIn()),
            Evidence.saw("length", feet(needed.aIn()))
                .and("push-height", feet(needed.load().heightIn()))));
    return list;
  }

  private List<CalculationStep> push(Checked check, NonConstrainedEmbedment needed) {
    SidePush across = context.standing().across();
    boolean sideways = Math.abs(across.resultantIn() - needed.load().heightIn()) < 1e-9;
    SidePush push = sideways ? across : context.standing().along();
    String way = sideways ? "across" : "along";
    Evidence both =
        Evidence.saw("top", pounds(push.topLb())).and("spread", pounds(push.spreadLb()));
    return List.of(
        step(
            check,
            "push",
            pounds(needed.load().forceLb()),
            both.and("way", way)
                .and("factor", Measure.ratio(LoadCombination.UPLIFT.factor(LoadKind.WIND)))),
        step(
            check,
            "height",
            feet(needed.load().heightIn()),
            both.and("moment", moment(push.momentAtInLb(0)))));
  }

  private List<CalculationStep> bearing(Checked check) {
    VerticalBearing pressed = work.bearing(depthIn, holeIn);
    double areaFt2 = pressed.areaIn2() / Inches.SQUARE_PER_SQUARE_FOOT;
    double morePcf = foot.weights().concretePcf() - foot.weights().soilPcf();
    double ownPsf = foot.concrete() ? morePcf * depthIn / Inches.PER_FOOT : 0;
    double loadLb = pressed.loadLb() - ownPsf * areaFt2;
    List<CalculationStep> list = new ArrayList<>(standing(check, loadLb));
    Measure area = new Measure(areaFt2, Unit.SQUARE_FOOT);
    list.add(step(check, "area", area, Evidence.saw("hole", feet(holeIn))));
    Evidence evidence =
        Evidence.saw(context.onBrackets() ? "solved" : "load", pounds(loadLb))
            .and("area", area)
            .and("soil-pressure", Measure.psf(pressed.allowablePsf()));
    if (ownPsf > 0) {
      list.add(
          step(
              check,
              "own-pressure",
              Measure.psf(ownPsf),
              Evidence.saw("concrete-weight", pcf(foot.weights().concretePcf()))
                  .and("soil-weight", pcf(foot.weights().soilPcf()))
                  .and("depth", feet(depthIn))));
      evidence = evidence.and("own", Measure.psf(ownPsf)).and("c", "");
    }
    list.add(
        step(
            check,
            context.onBrackets() ? "pressure-pier" : "pressure",
            Measure.psf(pressed.pressurePsf()),
            evidence));
    return list;
  }

  /** What stands on the foot; on brackets as the frames have it. */
  private List<CalculationStep> standing(Checked check, double loadLb) {
    if (context.onBrackets()) {
      return List.of();
    }
    double heightIn = context.standing().across().heightIn();
    double ownLbPerIn = context.timber(POST_SIZE).weightLbPerIn();
    List<CalculationStep> list = new ArrayList<>(BeamTrace.onPost(context, steps, check));
    list.add(
        step(
            check,
            "load",
            pounds(loadLb),
            Evidence.saw("reaction", pounds(loadLb - ownLbPerIn * heightIn))
                .and("post-weight", perInch(ownLbPerIn))
                .and("height", Measure.inches(heightIn))));
    return list;
  }

  private List<CalculationStep> uplift(Checked check) {
    double upLb = check.check().demand();
    if (!(upLb > 0)) {
      return List.of();
    }
    double heightIn = context.standing().across().heightIn();
    boolean winds = check.combination().equals(LoadCombination.UPLIFT.id());
    List<CalculationStep> list = new ArrayList<>();
    if (!context.onBrackets() && winds) {
      list.addAll(BeamTrace.liftsFoot(context, steps, check));
    }
    double factor = LoadCombination.of(check.combination()).factor(LoadKind.DEAD);
    double postLb = context.onBrackets() ? 0 : context.timber(POST_SIZE).weightLbPerIn() * heightIn;
    Evidence hold = Evidence.saw("lifted", pounds(upLb)).and("factor", Measure.ratio(factor));
    if (postLb > 0) {
      list.add(
          step(
              check,
              "post-weight",
              pounds(postLb),
              Evidence.saw("own", perInch(context.timber(POST_SIZE).weightLbPerIn()))
                  .and("height", Measure.inches(heightIn))));
    }
    hold = hold.and("post", pounds(postLb));
    double holdLb = check.check().capacity();
    if (foot.concrete()) {
      double concreteLb = holdLb / factor - postLb;
      list.add(
          step(
              check,
              "concrete",
              pounds(concreteLb),
              Evidence.saw("hole", feet(holeIn))
                  .and("breadth", feet(foot.postBreadthIn()))
                  .and("depth", feet(depthIn))
                  .and("concrete-weight", pcf(foot.weights().concretePcf()))));
      list.add(step(check, "hold", pounds(holdLb), hold.and("concrete", pounds(concreteLb))));
      return list;
    }
    double gripLb = holdLb - factor * postLb;
    list.add(
        step(
            check,
            "grip",
            pounds(gripLb),
            Evidence.saw("grip", Measure.ratio(foot.gripRatio()))
                .and("soil-weight", pcf(foot.weights().soilPcf()))
                .and("depth", feet(depthIn))
                .and("breadth", feet(foot.postBreadthIn()))));
    list.add(step(check, "hold-grip", pounds(holdLb), hold.and("gripped", pounds(gripLb))));
    return list;
  }

  private static Measure pcf(double amount) {
    return new Measure(amount, Unit.PCF);
  }

  private CalculationStep step(Checked check, String what, Measure result, Evidence evidence) {
    return steps.of(
        "footing." + what,
        result,
        evidence.and("check", check.id()).and("combination", check.combination()));
  }
}

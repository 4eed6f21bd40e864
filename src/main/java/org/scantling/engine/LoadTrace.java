package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.scantling.confirm.PostInGround;
import org.scantling.confirm.SidePush;
import org.scantling.design.Site;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Question;
import org.scantling.tables.SizeRow;
import org.scantling.timber.Rectangle;

/**
 * How the loads behind the checks of the finished answers were worked, and what the timber is
 * allowed, for going over by hand.
 */
final class LoadTrace {
  private final DesignProblem problem;
  private final CheckContext context;
  private final CalculationSteps steps;
  private final BiPredicate<Question, String> governedBy;

  /**
   * @param governedBy whether what set the answer to a question read a fact of that reference
   */
  LoadTrace(DesignProblem problem, Answers answers, BiPredicate<Question, String> governedBy) {
    this.problem = problem;
    this.context = problem.context(answers).asDug();
    this.governedBy = governedBy;
    this.steps = new CalculationSteps(problem.tables());
  }

  List<CalculationStep> list() {
    DerivedLoads loads = new DerivedLoads(problem, context.answers(), context.geometry());
    List<CalculationStep> list = new ArrayList<>();
    Site.Climate climate = problem.site().climate();
    climate
        .weather()
        .snow()
        .map(snow -> new ConvertedSnow(problem.tables(), snow).worked().lines())
        .ifPresent(lines -> list.addAll(steps.of("snow.", lines, Evidence.none())));
    List<FormulaLine> converted = new ConvertedWind(problem.tables(), climate).lines();
    list.addAll(steps.of("wind.", converted, Evidence.none()));
    list.addAll(steps.of("snow.", loads.snow().lines(), Evidence.none()));
    Evidence exposure = Evidence.saw("exposure", context.answers().option(EXPOSURE));
    list.addAll(
        steps.of(
            "wind.",
            loads.pressure().lines(),
            line -> line.id().startsWith("hill") ? loads.shape() : exposure));
    list.addAll(new SideTrace(context, steps).list());
    if (!context.onBrackets()) {
      list.addAll(post());
    }
    list.addAll(new TopTrace(context, steps).list());
    list.addAll(new BeamLoadTrace(context, steps).list());
    list.addAll(new StressTrace(context, steps).list());
    list.addAll(BeamTrace.crossbeam(context, steps).list());
    list.addAll(BeamTrace.header(context, steps).list());
    list.addAll(frost());
    if (context.upright()) {
      list.addAll(new FootingTrace(context, steps).list());
    }
    if (context.onBrackets()) {
      list.addAll(BracedTrace.of(context, steps));
    } else {
      list.addAll(new PostTrace(context, steps).list());
      list.addAll(new NotchTrace(context, steps).list());
      list.addAll(new SwayTrace(context, steps).list());
    }
    return list;
  }

  /** How deep the ground freezes; told of the footings too where that sets their depth. */
  private List<CalculationStep> frost() {
    if (!governedBy.test(FROST_DEPTH, DerivedClimate.FROST)) {
      return List.of();
    }
    Evidence about =
        governedBy.test(FOOTING_DEPTH, FROST_DEPTH.id())
            ? Evidence.none()
            : Evidence.saw("member", FROST_DEPTH.id());
    return new DerivedClimate(problem)
        .frost()
        .map(depth -> steps.of("frost.", depth.lines(), about))
        .orElse(List.of());
  }

  /** Bending of a post that the ground holds, by the push that bends it harder. */
  private List<CalculationStep> post() {
    PostInGround ground = context.ground();
    SidePush across = context.standing().across();
    SidePush along = context.standing().along();
    boolean sideways = bentInLb(across, ground) >= bentInLb(along, ground);
    SidePush push = sideways ? across : along;
    double momentInLb = CalculationSteps.WIND_SHARE * bentInLb(push, ground);
    SizeRow size = context.stock().row(context.answers().option(POST_SIZE));
    Rectangle section = new Rectangle(size.thicknessIn(), size.widthIn());
    return List.of(
        steps.of(
            "post.moment",
            new Measure(momentInLb, Unit.INCH_POUND),
            Evidence.saw("way", sideways ? "across" : "along")
                .and("moment", new Measure(push.momentAtInLb(0), Unit.INCH_POUND))
                .and("groundRatio", Measure.ratio(ground.bendingRatio(push)))),
        steps.of(
            "post.stress",
            new Measure(momentInLb / section.sectionModulusIn3(), Unit.PSI),
            Evidence.saw("moment", new Measure(momentInLb, Unit.INCH_POUND))
                .and("breadth", Measure.inches(size.thicknessIn()))
                .and("depth", Measure.inches(size.widthIn()))));
  }

  private static double bentInLb(SidePush push, PostInGround ground) {
    return push.momentAtInLb(0) * ground.bendingRatio(push);
  }
}

package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.PostInGround;
import org.scantling.confirm.SidePush;
import org.scantling.design.Site;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;
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

  LoadTrace(DesignProblem problem, Answers answers) {
    this.problem = problem;
    this.context = problem.context(answers).asDug();
    this.steps = new CalculationSteps(problem.tables());
  }

  List<CalculationStep> list() {
    DerivedLoads loads = new DerivedLoads(problem, context.answers(), context.geometry());
    List<CalculationStep> list = new ArrayList<>();
    Site.Climate climate = problem.site().climate();
    climate
        .weather()
        .snow()
        .map(snow -> new ConvertedSnow(problem.tables(), snow).trace(steps))
        .ifPresent(list::addAll);
    list.addAll(new ConvertedWind(problem.tables(), climate).trace(steps));
    list.add(step(loads.flatSnow()));
    list.add(heightFactor());
    loads.hillWind().map(LoadTrace::factor).ifPresent(list::add);
    list.add(step(loads.wind()));
    SideTrace across = SideTrace.across(context, steps);
    SideTrace along = SideTrace.along(context, steps);
    list.addAll(across.list());
    list.addAll(along.list());
    if (!context.onBrackets()) {
      list.addAll(post());
    }
    list.addAll(new TopTrace(context, steps).list());
    list.addAll(new BeamLoadTrace(context, steps).list());
    list.addAll(new StressTrace(context, steps).list());
    list.addAll(BeamTrace.crossbeam(context, steps).list());
    list.addAll(BeamTrace.header(context, steps).list());
    if (context.upright()) {
      list.addAll(new FootingTrace(context, steps).list());
    }
    if (context.onBrackets()) {
      list.addAll(BracedTrace.of(context, steps));
    } else {
      list.addAll(new PostTrace(context, steps).list());
      list.addAll(new NotchTrace(context, steps).list());
    }
    return list;
  }

  private static CalculationStep factor(Worked worked) {
    Measure result = Measure.ratio(worked.number());
    return new CalculationStep(worked.id(), result, worked.evidence(), worked.source());
  }

  private static CalculationStep step(Worked worked) {
    Measure result = new Measure(worked.number(), worked.question().unit());
    return new CalculationStep(worked.id(), result, worked.evidence(), worked.source());
  }

  private CalculationStep heightFactor() {
    ExposureRow exposure = problem.tables().exposure(context.answers().option(EXPOSURE));
    double heightFt = context.geometry().overallHeightIn() / Inches.PER_FOOT;
    double countedFt = Math.max(heightFt, exposure.leastHeightFt());
    double kz = DerivedLoads.growing(exposure).kzFactor(countedFt * Inches.PER_FOOT);
    return steps.of(
        "wind.height-factor",
        Measure.ratio(kz),
        Evidence.saw("height", new Measure(countedFt, Unit.FOOT))
            .and("lowest", new Measure(exposure.leastHeightFt(), Unit.FOOT))
            .and("gradient", new Measure(exposure.gradientHeightFt(), Unit.FOOT))
            .and("alpha", Measure.ratio(exposure.alphaFactor()))
            .and("exposure", exposure.id()));
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

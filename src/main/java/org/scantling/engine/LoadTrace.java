package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.confirm.PostScene;
import org.scantling.design.Site;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;

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
    list.addAll(new JointTrace(context, steps).list());
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
    return context
        .posts()
        .heldBy(context.ground())
        .mostBent(context.timber(POST_SIZE), LoadCombination.DEAD_WIND)
        .map(this::bent)
        .orElse(List.of());
  }

  private List<CalculationStep> bent(PostScene scene) {
    return List.of(
        steps.as(
            "post.moment",
            scene.moment().lines().get(0),
            Evidence.saw("way", PostTrace.way(scene))),
        steps.as("post.stress", scene.bending().lines().get(0), Evidence.none()));
  }
}

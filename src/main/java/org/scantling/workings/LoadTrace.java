package org.scantling.workings;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.PostScene;
import org.scantling.design.Site;
import org.scantling.facts.ConvertedSnow;
import org.scantling.facts.ConvertedWind;
import org.scantling.facts.DerivedClimate;
import org.scantling.facts.DerivedLoads;
import org.scantling.loads.LoadCombination;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.FormulaLine;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Question;

/**
 * How the loads behind the checks of the finished answers were worked, and what the timber is
 * allowed, for going over by hand.
 */
public final class LoadTrace {
  private final DesignProblem problem;
  private final CheckContext context;
  private final CalculationSteps steps;
  private final BiPredicate<Question, String> governedBy;

  /**
   * @param governedBy whether what set the answer to a question read a fact of that reference
   */
  public LoadTrace(
      DesignProblem problem, Answers answers, BiPredicate<Question, String> governedBy) {
    this.problem = problem;
    this.context = problem.context(answers).asDug();
    this.governedBy = governedBy;
    this.steps = new CalculationSteps(problem.tables());
  }

  public List<CalculationStep> list() {
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
    list.addAll(new JointTrace(context, steps).list());
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

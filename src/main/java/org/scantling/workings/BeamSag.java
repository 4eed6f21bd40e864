package org.scantling.workings;

import static org.scantling.workings.CalculationSteps.moment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.confirm.BeamScene;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.Peak;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.timber.Deflection;
import org.scantling.timber.Rectangle;
import org.scantling.workings.BeamBurden.Part;

/** How far the span that sags most sags in the end: by what stays with its creep, and the rest. */
final class BeamSag {
  /** Distances that a line can name. */
  private static final int NAMED = 12;

  private final BeamTask task;
  private final BeamStresses stresses;
  private final BeamScene scene;
  private final double stiffness;
  private final double creep;

  BeamSag(BeamTask task, BeamStresses stresses) {
    this.task = task;
    this.stresses = stresses;
    this.scene = task.scene();
    Rectangle section = stresses.section();
    this.stiffness = stresses.stiffnessPsi() * section.secondMomentIn4();
    this.creep = stresses.creepFactor();
  }

  List<CalculationStep> list() {
    int span = worst();
    List<CalculationStep> list = new ArrayList<>();
    double stillIn = part(list, Part.STILL, span);
    double passingIn = part(list, Part.PASSING, span);
    for (FormulaLine line : new Deflection(stillIn, passingIn, creep).lines()) {
      list.add(task.both(line.id(), line));
    }
    return list;
  }

  private int worst() {
    int worst = 0;
    for (int span = 1; span < scene.beam().spanCount(); span++) {
      if (total(span) > total(worst) * (1 + 1e-9)) {
        worst = span;
      }
    }
    return worst;
  }

  private double total(int span) {
    return creep * Math.abs(scene.permanent().largestSpanDeflection(span).amount())
        + Math.abs(scene.passing().largestSpanDeflection(span).amount());
  }

  /** The sag of the span by a part of the loads, without sign. */
  private double part(List<CalculationStep> list, Part part, int span) {
    BeamStatics statics = new BeamStatics(task, part);
    BeamResult result = statics.result();
    Peak peak = result.largestSpanDeflection(span);
    statics.moments(Set.of(span, span + 1));
    list.addAll(statics.lines());
    double fromIn = peak.atIn() - scene.beam().supportAtIn(span);
    double sagIn = peak.amount() / stiffness;
    // A line that could not name every crossbeam would not be one to go over.
    if (task.uneven()) {
      list.add(
          task.step(
              "solved-sag", Measure.inches(sagIn), simple(statics, part, span, fromIn, sagIn)));
    } else if (!task.onPosts() || task.passed(fromIn) <= NAMED) {
      list.add(task.step("sag", Measure.inches(sagIn), evidence(statics, part, span, fromIn)));
    }
    return Math.abs(sagIn);
  }

  /** The sag of a simple span is what the moments over its ends take off. */
  private Evidence simple(BeamStatics statics, Part part, int span, double fromIn, double sagIn) {
    double spanIn = scene.spanIn(span);
    double ends =
        statics.over(span) * (2 * spanIn - fromIn) + statics.over(span + 1) * (spanIn + fromIn);
    double takenIn = fromIn * (spanIn - fromIn) * ends / (6 * spanIn) / stiffness;
    Rectangle section = stresses.section();
    return Evidence.saw(
            "what", WorkingLabels.say(part == Part.STILL ? "load.permanent" : "load.passing"))
        .and("at", Measure.inches(fromIn))
        .and("post", Measure.count(span + 1))
        .and("simple", Measure.inches(sagIn + takenIn))
        .and("span", Measure.inches(spanIn))
        .and("near", moment(statics.over(span)))
        .and("far", moment(statics.over(span + 1)))
        .and("stiffness", Measure.psi(stresses.stiffnessPsi()))
        .and("breadth", Measure.inches(section.breadthIn()))
        .and("depth", Measure.inches(section.depthIn()));
  }

  private Evidence evidence(BeamStatics statics, Part part, int span, double fromIn) {
    Rectangle section = stresses.section();
    Evidence evidence =
        Evidence.saw(
                "what", WorkingLabels.say(part == Part.STILL ? "load.permanent" : "load.passing"))
            .and("at", Measure.inches(fromIn))
            .and("load", statics.even(span))
            .and("span", Measure.inches(scene.spanIn(span)))
            .and("near", moment(statics.over(span)))
            .and("far", moment(statics.over(span + 1)))
            .and("stiffness", Measure.psi(stresses.stiffnessPsi()))
            .and("breadth", Measure.inches(section.breadthIn()))
            .and("depth", Measure.inches(section.depthIn()));
    evidence = statics.withCrossbeams(evidence, span);
    if (!task.onPosts()) {
      return evidence;
    }
    evidence = evidence.and("post", Measure.count(span + 1));
    int passed = task.passed(fromIn);
    for (int each = 1; each <= passed; each++) {
      evidence =
          evidence.and(
              "arm-" + (char) ('a' + each - 1), Measure.inches(fromIn - each * task.spacingIn()));
    }
    return passed > 0 ? evidence.and("j", "") : evidence;
  }
}

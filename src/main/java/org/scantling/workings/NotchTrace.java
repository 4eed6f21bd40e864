package org.scantling.workings;

import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.NotchScene;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/**
 * A post in the ground where a rail is housed: pressure and bending on what is left, then the sum.
 */
final class NotchTrace {
  private static final String CHECK = "post.rail-notch";

  private final CheckContext context;
  private final CalculationSteps steps;

  NotchTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    PostTrace.check(context, CHECK)
        .ifPresent(
            check ->
                context
                    .posts()
                    .hardestAtNotch(
                        context.timber(POST_SIZE), LoadCombination.of(check.combination()))
                    .ifPresent(scene -> add(list, check, scene)));
    return list;
  }

  private void add(List<CalculationStep> list, Checked check, NotchScene scene) {
    Evidence about = Evidence.saw("check", CHECK).and("combination", scene.combination().id());
    list.addAll(BeamTrace.onPost(context, steps, check));
    list.addAll(steps.of("post.notch.", scene.pressed().lines(), about));
    // The whole post under the same load.
    list.addAll(steps.of("post.combined.", scene.column().lines(), about));
    list.addAll(
        steps.of(
            "post.notch.", scene.lines(), about.and("way", scene.along() ? "along" : "across")));
  }
}

package org.scantling.workings;

import static org.scantling.reasons.Question.POST_SIZE;

import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/** How far the foot of a post in the ground turns, and the top of the post sways with it. */
final class SwayTrace {
  private final CheckContext context;
  private final CalculationSteps steps;

  SwayTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
  }

  List<CalculationStep> list() {
    return context.checks(POST_SIZE, context.answers().option(POST_SIZE)).stream()
        .filter(check -> check.id().equals("post.drift"))
        .flatMap(check -> told(check).stream())
        .toList();
  }

  /** Nothing on rock, in which no foot turns. */
  private List<CalculationStep> told(Checked check) {
    Evidence about = Evidence.saw("check", check.id()).and("combination", check.combination());
    return context
        .sway()
        .most(context.dugIn(), check.combination())
        .map(sway -> steps.of("post.drift.", sway.lines(), about))
        .orElse(List.of());
  }
}

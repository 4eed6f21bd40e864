package org.scantling.workings;

import static org.scantling.reasons.Question.FOOTING_DEPTH;
import static org.scantling.reasons.Question.HOLE_DIAMETER;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.FootingWork;
import org.scantling.confirm.HeldFoot;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.FormulaLine;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;

/** How deep a post or a pier stands against the push, what it presses with and what holds it. */
final class FootingTrace {
  private static final String PREFIX = "footing.";

  private final CheckContext context;
  private final CalculationSteps steps;
  private final FootingWork work;
  private final double depthIn;
  private final double holeIn;

  FootingTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.work = context.footing();
    this.depthIn = context.answers().number(FOOTING_DEPTH);
    this.holeIn = context.answers().number(HOLE_DIAMETER);
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    for (Checked check : context.footingChecks(depthIn, holeIn)) {
      list.addAll(
          switch (check.id()) {
            case "footing.embedment" -> embedment(check);
            case "footing.bearing" -> bearing(check);
            case "footing.uplift" -> uplift(check);
            case "footing.sliding" -> sliding(check);
            default -> List.of();
          });
    }
    return list;
  }

  private List<CalculationStep> embedment(Checked check) {
    HeldFoot held = work.held(holeIn);
    Evidence way =
        held.push()
            .wind()
            .map(wind -> Evidence.saw("way", wind.way().word()))
            .orElse(Evidence.none());
    return steps.of(
        PREFIX,
        held.lines(),
        line -> (line.id().equals("push") ? way : Evidence.none()).and(of(check)));
  }

  private List<CalculationStep> bearing(Checked check) {
    List<CalculationStep> list = new ArrayList<>();
    if (!context.onBrackets()) {
      list.addAll(BeamTrace.onPost(context, steps, check));
    }
    Evidence concrete = Evidence.saw("c", "");
    list.addAll(
        steps.of(
            PREFIX,
            work.borne(depthIn, holeIn).lines(),
            line -> (has(line, "own") ? concrete : Evidence.none()).and(of(check))));
    return list;
  }

  private List<CalculationStep> uplift(Checked check) {
    List<CalculationStep> list = new ArrayList<>();
    boolean winds = check.combination().equals(LoadCombination.UPLIFT.id());
    if (check.check().demand() > 0 && !context.onBrackets() && winds) {
      list.addAll(BeamTrace.liftsFoot(context, steps, check));
    }
    list.addAll(steps.of(PREFIX, work.heldDown(depthIn, holeIn).lines(), of(check)));
    return list;
  }

  private List<CalculationStep> sliding(Checked check) {
    return work.slid(depthIn, holeIn)
        .map(pier -> steps.of(PREFIX, pier.lines(), of(check)))
        .orElse(List.of());
  }

  private static boolean has(FormulaLine line, String operand) {
    return line.operands().stream().anyMatch(each -> each.name().equals(operand));
  }

  private static Evidence of(Checked check) {
    return Evidence.saw("check", check.id()).and("combination", check.combination());
  }
}

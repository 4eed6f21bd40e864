package org.scantling.workings;

import static org.scantling.reasons.Question.BRACE_JOINT;
import static org.scantling.reasons.Question.CROSSBEAM_JOINT;
import static org.scantling.reasons.Question.HEADER_JOINT;
import static org.scantling.reasons.Question.RAIL_JOINT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.JointChecks;
import org.scantling.confirm.JointCase;
import org.scantling.confirm.JointLines;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Question;
import org.scantling.tables.JointRow;

/** How the fasteners of each kind of joint were worked, in the check that is used up most. */
final class JointTrace {
  private static final List<Question> JOINTS =
      List.of(CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT);

  private final CheckContext context;
  private final CalculationSteps steps;
  private final JointChecks joints;

  JointTrace(CheckContext context, CalculationSteps steps) {
    this.context = context;
    this.steps = steps;
    this.joints = new JointChecks(context);
  }

  List<CalculationStep> list() {
    List<CalculationStep> list = new ArrayList<>();
    for (Question question : JOINTS) {
      row(question).ifPresent(row -> list.addAll(of(question, row)));
    }
    return list;
  }

  private Optional<JointRow> row(Question question) {
    return context.answers().has(question)
        ? context.tables().joints().find(context.answers().option(question))
        : Optional.empty();
  }

  private List<CalculationStep> of(Question question, JointRow row) {
    List<JointCase> cases = joints.cases(row).toList();
    Optional<Checked> hardest =
        joints.checks(row).stream()
            .filter(check -> cases.stream().anyMatch(each -> isOf(check, each)))
            .max(Comparator.comparingDouble(check -> check.check().ratio()));
    return hardest
        .flatMap(
            check ->
                cases.stream()
                    .filter(each -> isOf(check, each))
                    .max(Comparator.comparingDouble(each -> each.check().ratio()))
                    .map(each -> told(question, check, each)))
        .orElse(List.of());
  }

  private static boolean isOf(Checked check, JointCase each) {
    return check.id().equals(each.id()) && check.combination().equals(each.combination().id());
  }

  private List<CalculationStep> told(Question question, Checked check, JointCase hardest) {
    List<CalculationStep> list = new ArrayList<>();
    for (JointLines part : hardest.parts()) {
      Evidence about =
          Evidence.saw("member", question.id())
              .and("check", check.id())
              .and("combination", check.combination());
      for (Map.Entry<String, String> word : part.words().entrySet()) {
        about = about.and(word.getKey(), label(word.getKey(), word.getValue()));
      }
      list.addAll(steps.of("joint.", part.lines(), about));
    }
    return list;
  }

  /** A mode is told by its numeral. */
  private static String label(String blank, String word) {
    return switch (blank) {
      case "piece" -> WorkingLabels.say("piece." + word);
      case "place" -> WorkingLabels.say("place." + word);
      default -> word;
    };
  }
}

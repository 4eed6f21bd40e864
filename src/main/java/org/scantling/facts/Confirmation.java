package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.JointChecks;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;

/** Every check of a whole set of answers, whether rules decided them or a design brought them. */
public final class Confirmation {
  private final DesignProblem problem;
  private final Answers answers;
  private final Set<Question> asked;
  private final CheckContext context;

  /**
   * @param asked the questions that this structure has at all
   */
  public Confirmation(DesignProblem problem, Answers answers, Set<Question> asked) {
    this.problem = problem;
    this.answers = answers;
    this.asked = asked;
    this.context = problem.context(answers).asDug();
  }

  /** Each check once, in the order of the load path. */
  public List<Checked> checks() {
    List<Checked> checks = new ArrayList<>();
    for (Question question : List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE)) {
      checks.addAll(context.checks(question, answers.option(question)));
    }
    if (context.braced().isPresent()) {
      checks.addAll(context.checks(BRACE_SIZE, answers.option(BRACE_SIZE)));
    }
    if (context.upright()) {
      checks.addAll(
          context.footingChecks(answers.number(FOOTING_DEPTH), answers.number(HOLE_DIAMETER)));
    }
    checks.addAll(joints());
    return worst(checks);
  }

  /** The roles of which nothing can be worked, because nothing holds the posts upright. */
  public List<String> unworked() {
    return context.upright() ? List.of() : List.of("post", "brace", "footing");
  }

  private List<Checked> joints() {
    JointChecks joints = new JointChecks(context);
    List<Checked> checks = new ArrayList<>();
    for (Question question :
        List.of(CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, HEADER_STEP, BASE_JOINT)) {
      if (asked.contains(question)) {
        checks.addAll(joints.checks(problem.tables().joints().row(answers.option(question))));
      }
    }
    return checks;
  }

  /** One entry a check: several joints may ask for the same distance. */
  private static List<Checked> worst(List<Checked> checks) {
    Map<String, Checked> byId = new LinkedHashMap<>();
    checks.forEach(
        each ->
            byId.merge(
                each.id(),
                each,
                (one, other) -> one.check().ratio() >= other.check().ratio() ? one : other));
    return new ArrayList<>(byId.values());
  }
}

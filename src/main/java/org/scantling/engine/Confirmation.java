package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;

/** Every check of a whole set of answers, whether rules decided them or a design brought them. */
final class Confirmation {
  private final Job job;
  private final Answers answers;
  private final Set<Question> asked;
  private final Bench bench;

  /**
   * @param asked the questions that this structure has at all
   */
  Confirmation(Job job, Answers answers, Set<Question> asked) {
    this.job = job;
    this.answers = answers;
    this.asked = asked;
    this.bench = job.bench(answers).asDug();
  }

  /** Each check once, in the order of the load path. */
  List<Checked> checks() {
    List<Checked> checks = new ArrayList<>();
    for (Question question : List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE)) {
      checks.addAll(bench.checks(question, answers.option(question)));
    }
    if (bench.braced().isPresent()) {
      checks.addAll(bench.checks(BRACE_SIZE, answers.option(BRACE_SIZE)));
    }
    if (bench.upright()) {
      checks.addAll(
          bench.footingChecks(answers.number(FOOTING_DEPTH), answers.number(HOLE_DIAMETER)));
    }
    checks.addAll(joints());
    return worst(checks);
  }

  /** The roles of which nothing can be worked, because nothing holds the posts upright. */
  List<String> unworked() {
    return bench.upright() ? List.of() : List.of("post", "brace", "footing");
  }

  private List<Checked> joints() {
    JointBench joints = new JointBench(bench);
    List<Checked> checks = new ArrayList<>();
    for (Question question :
        List.of(CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, HEADER_STEP, BASE_JOINT)) {
      if (asked.contains(question)) {
        checks.addAll(joints.checks(job.tables().joints().row(answers.option(question))));
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

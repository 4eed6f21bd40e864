package org.scantling.causes;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/**
 * Which demand of the site is told to be behind what breaks: {@code rules/blamed.csv}. A row names
 * an answer whose change broke a check, and where the site file asks for it or for what it follows
 * from; or a phase, {@code in posts}, or one question of it, {@code no joint.splice}, and what to
 * try first where no calculation tells.
 */
final class BlamedDemands {
  private static final String OF_PHASE = "in ";
  private static final String OF_QUESTION = "no ";

  private final Map<Question, Demand> asked = new EnumMap<>(Question.class);
  private final Map<Question, Demand> unanswered = new EnumMap<>(Question.class);
  private final Map<Phase, Demand> nearest = new EnumMap<>(Phase.class);

  private BlamedDemands() {}

  static BlamedDemands read() {
    Map<String, Phase> phases = new HashMap<>();
    for (Phase phase : Phase.values()) {
      phases.put(OF_PHASE + phase.folder(), phase);
    }
    BlamedDemands blamed = new BlamedDemands();
    for (WordRow row : WordFile.read("blamed.csv")) {
      String broken = row.cell("broken");
      Demand demand = Demand.of(row.cell("demand"));
      Phase phase = phases.get(broken);
      if (phase != null) {
        blamed.nearest.put(phase, demand);
      } else if (broken.startsWith(OF_QUESTION)) {
        String question = broken.substring(OF_QUESTION.length());
        blamed.unanswered.put(Question.of(question), demand);
      } else {
        blamed.asked.put(Question.of(broken), demand);
      }
    }
    return blamed;
  }

  /** Where the site file asks for what an answer is; nothing where it follows from others. */
  Optional<Demand> behind(Question question) {
    return Optional.ofNullable(asked.get(question));
  }

  /** What to try first where a question has no answer and no calculation tells what moved it. */
  Demand nearest(Question broken) {
    Phase phase = broken.phase();
    Demand demand = unanswered.getOrDefault(broken, nearest.get(phase));
    if (demand == null) {
      throw new IllegalStateException("rules/blamed.csv has no row 'in " + phase.folder() + "'");
    }
    return demand;
  }
}

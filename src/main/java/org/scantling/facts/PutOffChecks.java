package org.scantling.facts;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Question;

/** Checks that may not be needed, each list worked when it is asked for and then no more. */
final class PutOffChecks {
  private final Map<Question, Map<String, Supplier<List<Checked>>>> unworked =
      new EnumMap<>(Question.class);

  void add(Question question, String option, Supplier<List<Checked>> checks) {
    unworked.computeIfAbsent(question, each -> new HashMap<>()).put(option, checks);
  }

  /** The checks of an option, if any were put off. */
  Optional<List<Checked>> worked(Question question, String option) {
    return Optional.ofNullable(unworked.getOrDefault(question, new HashMap<>()).remove(option))
        .map(Supplier::get);
  }

  /** The questions of which some were put off. */
  Set<Question> questions() {
    return unworked.keySet();
  }

  /** The options of a question whose checks are still put off. */
  Set<String> options(Question question) {
    return Set.copyOf(unworked.getOrDefault(question, Map.of()).keySet());
  }
}

package org.scantling.facts;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.rulebase.Fired;

/**
 * What the rules tell of the options of one question while some of their checks are not worked.
 *
 * @param worst the highest ratio that stops an option
 * @param asked options that the site asks for
 */
record ToldStops(Map<String, Double> worst, Set<String> asked) {
  static ToldStops of(Question question, List<Fired> fired) {
    Map<String, Double> worst = new HashMap<>();
    Set<String> asked = new HashSet<>();
    for (Fired each : fired) {
      if (each.finding() instanceof Finding.Reject reject && reject.question() == question) {
        worst.merge(reject.option(), reject.ratio(), Math::max);
      } else if (each.finding() instanceof Finding.PreferOption preferred
          && preferred.question() == question
          && preferred.priority() == Priority.ASKED) {
        asked.add(preferred.option());
      }
    }
    return new ToldStops(worst, asked);
  }

  /**
   * Those of the open options of which it is told what stops them: one that is asked for, and where
   * no option is left every one that may come closest.
   *
   * @param options that the rules were shown, smallest first
   * @param floor the least rank that may be the answer
   * @param open those with checks that are not worked
   */
  List<String> unsure(List<String> options, int floor, Set<String> open) {
    boolean none = worst.keySet().containsAll(options.subList(floor, options.size()));
    double closest =
        options.stream()
            .filter(option -> !open.contains(option) && worst.containsKey(option))
            .mapToDouble(worst::get)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return options.stream()
        .filter(open::contains)
        .filter(
            option -> asked.contains(option) || (none && worst.getOrDefault(option, 0.0) < closest))
        .toList();
  }
}

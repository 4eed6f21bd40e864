package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;

/** Rules that bound an answer by one row of a table alone, from below and from above. */
final class FixedBounds {
  private static final Pattern NUMBER =
      Pattern.compile("Finding\\.at(?:Least|Most)\\([^,]+,\\s*(\\$\\w+)\\s*[,)]");

  private final Map<Question, List<Bound>> least = new EnumMap<>(Question.class);
  private final Map<Question, List<Bound>> most = new EnumMap<>(Question.class);
  private int count;

  private record Bound(String rule, Measure measure) {}

  FixedBounds(Collection<RuleText> rules, Figures figures) {
    for (RuleText rule : rules) {
      Map<Question, List<Bound>> side =
          rule.verdict() == Verdict.AT_LEAST
              ? least
              : rule.verdict() == Verdict.AT_MOST ? most : null;
      if (side != null) {
        fixed(rule, figures)
            .ifPresent(
                measure ->
                    rule.questions()
                        .forEach(
                            question ->
                                side.computeIfAbsent(question, key -> new ArrayList<>())
                                    .add(new Bound(rule.id(), measure))));
      }
    }
  }

  /** Pairs that were compared. */
  int count() {
    return count;
  }

  List<LintReport.Complaint> crossed() {
    List<LintReport.Complaint> crossed = new ArrayList<>();
    least.forEach(
        (question, lows) ->
            lows.forEach(
                low ->
                    most.getOrDefault(question, List.of())
                        .forEach(high -> compare(question, low, high, crossed))));
    return crossed;
  }

  private void compare(
      Question question, Bound low, Bound high, List<LintReport.Complaint> crossed) {
    count++;
    if (low.measure().amount() > high.measure().amount()) {
      crossed.add(
          new LintReport.Complaint(
              question.id(),
              Sayings.of("rule-base")
                  .say(
                      "fixed-crossed",
                      "low",
                      low.rule(),
                      "least",
                      String.valueOf(low.measure().amount()),
                      "high",
                      high.rule(),
                      "most",
                      String.valueOf(high.measure().amount()))));
    }
  }

  /** The row's number, where the bound is nothing else. */
  private static Optional<Measure> fixed(RuleText rule, Figures figures) {
    Matcher number = NUMBER.matcher(rule.then());
    if (!number.find()) {
      return Optional.empty();
    }
    return rule.premises().stream()
        .filter(premise -> premise.reads(number.group(1)).filter("amount"::equals).isPresent())
        .flatMap(premise -> figures.of(premise).stream())
        .flatMap(figure -> figure.measure().stream())
        .findFirst();
  }
}

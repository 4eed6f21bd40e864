package org.scantling.rulecases;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.Severity;
import tools.jackson.databind.JsonNode;

/** Findings as cases write them, told by their first key. */
final class FindingReader {
  private final NumberWords numbers;
  private final Map<String, Function<Entry, Found>> kinds = new TreeMap<>();

  FindingReader(TableCells cells) {
    this.numbers = new NumberWords(cells);
    kinds.put(
        "at-least", e -> Found.atLeast(rule(e), question(e, "at-least").id(), e.number("number")));
    kinds.put(
        "at-most", e -> Found.atMost(rule(e), question(e, "at-most").id(), e.number("number")));
    for (Priority priority : Priority.values()) {
      String word = priority.name().toLowerCase(Locale.ROOT);
      kinds.put(word, e -> prefer(e, word));
    }
    kinds.put("reject", FindingReader::reject);
    kinds.put("ease", e -> Found.ease(rule(e), e.word("ease"), e.number("ratio")));
    kinds.put(
        "caution",
        e -> Found.caution(rule(e), severity(e.word("severity")).word(), e.word("caution")));
    kinds.put(
        "refuse",
        e -> Found.refuse(rule(e), FactReader.demand(e, "refuse").path(), e.number("ratio")));
  }

  Found read(String where, JsonNode node) {
    try {
      Entry entry = new Entry(where, node, numbers, number -> number);
      Found found = kinds.get(entry.kind(kinds.keySet())).apply(entry);
      entry.refuseOthers();
      return found;
    } catch (IllegalArgumentException e) {
      throw new CaseFault(where + ": " + node + ": " + e.getMessage());
    }
  }

  private static Found prefer(Entry entry, String priority) {
    Question question = question(entry, priority);
    String what = question.numeric() ? Found.text(entry.number("number")) : entry.word("option");
    return Found.prefer(rule(entry), priority, question.id(), what);
  }

  private static Found reject(Entry entry) {
    return Found.reject(
        rule(entry),
        question(entry, "reject").id(),
        entry.word("option"),
        entry.word("check"),
        entry.number("ratio"));
  }

  private static String rule(Entry entry) {
    return entry.word("rule");
  }

  private static Question question(Entry entry, String key) {
    return Question.of(entry.word(key));
  }

  private static Severity severity(String word) {
    return Severity.valueOf(word.toUpperCase(Locale.ROOT));
  }
}

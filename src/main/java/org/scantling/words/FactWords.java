package org.scantling.words;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Question;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** What rules read, in words: rules/words/facts.csv. */
public final class FactWords {
  private final Map<String, WordRow> byFact = new HashMap<>();
  private final Subjects subjects;

  private FactWords(Subjects subjects) {
    this.subjects = subjects;
  }

  public static FactWords read(Words all) {
    FactWords words = new FactWords(all.subjects());
    WordFile.read("words/facts.csv").forEach(row -> words.byFact.put(row.cell("fact"), row));
    return words;
  }

  /** The kinds of fact that have words. */
  public Set<String> known() {
    return new TreeSet<>(byFact.keySet());
  }

  /**
   * What a rule reads; the kind itself where it has no words.
   *
   * @param fact the kind of fact
   * @param absent true where the rule asks that there be none
   */
  public String say(
      String fact,
      boolean absent,
      List<Question> questions,
      Optional<Demand> demand,
      Optional<String> id) {
    String text =
        Optional.ofNullable(byFact.get(fact))
            .map(row -> row.cell(absent ? "absent" : "reads"))
            .orElse(fact);
    String asked =
        questions.stream()
            .map(question -> subjects.row(question).label(Reader.BUILDER))
            .collect(Collectors.joining(" or "));
    return text.replace("{question}", asked.isEmpty() ? "anything" : asked)
        .replace("{path}", demand.map(Demand::path).orElse("anything"))
        .replace("{id}", id.orElse(""));
  }
}

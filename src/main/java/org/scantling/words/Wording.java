package org.scantling.words;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** One sentence a rule and reader, from rules/words/findings.csv. */
final class Wording {
  private final Map<String, ReaderTemplates> byRule = new LinkedHashMap<>();

  private Wording() {}

  static Wording read() {
    Wording wording = new Wording();
    WordFile.read("words/findings.csv").forEach(wording::add);
    return wording;
  }

  Set<String> rules() {
    return byRule.keySet();
  }

  /**
   * @throws IllegalArgumentException when the rule has no row
   */
  Template template(String rule, Reader reader) {
    ReaderTemplates row = byRule.get(rule);
    if (row == null) {
      throw new IllegalArgumentException(
          "rules/words/findings.csv has no row for rule '" + rule + "'");
    }
    return row.to(reader);
  }

  private void add(WordRow row) {
    if (byRule.put(row.cell("rule"), ReaderTemplates.of(row)) != null) {
      throw new IllegalStateException(
          "rules/words/findings.csv has two rows for " + row.cell("rule"));
    }
  }
}

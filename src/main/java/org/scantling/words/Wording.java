package org.scantling.words;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordFile;

/** One sentence a rule and reader, from rules/words/findings.csv. */
final class Wording {
  private final Map<String, Map<Reader, Template>> byRule = new LinkedHashMap<>();

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
    Map<Reader, Template> row = byRule.get(rule);
    if (row == null) {
      throw new IllegalArgumentException(
          "rules/words/findings.csv has no row for rule '" + rule + "'");
    }
    return row.get(reader);
  }

  private void add(Map<String, String> row) {
    Map<Reader, Template> templates = new EnumMap<>(Reader.class);
    for (Reader reader : Reader.values()) {
      templates.put(reader, new Template(row.get(reader.name().toLowerCase(Locale.ROOT))));
    }
    if (byRule.put(row.get("rule"), templates) != null) {
      throw new IllegalStateException(
          "rules/words/findings.csv has two rows for " + row.get("rule"));
    }
  }
}

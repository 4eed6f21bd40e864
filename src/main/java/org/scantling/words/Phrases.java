package org.scantling.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** Phrases that no rule says, for each reader: rules/words/phrases.csv. */
final class Phrases {
  private final Map<String, ReaderTemplates> byId = new HashMap<>();

  private Phrases() {}

  /** Read when they are first needed: most runs say none of them. */
  private static final class Held {
    static final Phrases ALL = read();
  }

  static Phrases all() {
    return Held.ALL;
  }

  private static Phrases read() {
    Phrases phrases = new Phrases();
    for (WordRow row : WordFile.read("words/phrases.csv")) {
      phrases.byId.put(row.cell("phrase"), ReaderTemplates.of(row));
    }
    return phrases;
  }

  Set<String> ids() {
    return byId.keySet();
  }

  /**
   * @throws IllegalArgumentException when there is no such phrase, or a blank stays empty
   */
  String say(String id, Reader reader, Map<String, String> blanks) {
    ReaderTemplates row = byId.get(id);
    if (row == null) {
      throw new IllegalArgumentException("rules/words/phrases.csv has no row for '" + id + "'");
    }
    return row.to(reader).filled(name -> Optional.ofNullable(blanks.get(name)));
  }
}

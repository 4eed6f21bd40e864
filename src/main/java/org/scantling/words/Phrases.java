package org.scantling.words;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordFile;

/** Phrases that no rule says, for each reader: rules/words/phrases.csv. */
final class Phrases {
  private final Map<String, Map<Reader, Template>> byId = new HashMap<>();

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
    for (Map<String, String> row : WordFile.read("words/phrases.csv")) {
      Map<Reader, Template> templates = new EnumMap<>(Reader.class);
      for (Reader reader : Reader.values()) {
        templates.put(reader, new Template(row.get(reader.name().toLowerCase(Locale.ROOT))));
      }
      phrases.byId.put(row.get("phrase"), templates);
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
    Map<Reader, Template> row = byId.get(id);
    if (row == null) {
      throw new IllegalArgumentException("rules/words/phrases.csv has no row for '" + id + "'");
    }
    return row.get(reader).filled(name -> Optional.ofNullable(blanks.get(name)));
  }
}

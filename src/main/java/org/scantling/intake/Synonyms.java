package org.scantling.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.scantling.tables.SynonymRow;

/** What people write where a file has another word or another key for it. */
final class Synonyms {
  private static final String KEYS = "key";

  private final Map<String, SynonymRow> rows = new HashMap<>();

  Synonyms(List<SynonymRow> all) {
    for (SynonymRow row : all) {
      row.written().forEach(word -> rows.put(row.list() + " " + plain(word), row));
    }
  }

  /**
   * The row of a word.
   *
   * @param list the list or key whose words it is about
   */
  Optional<SynonymRow> word(String list, String written) {
    return Optional.ofNullable(rows.get(list + " " + plain(written)));
  }

  /** The row of a key that neither file has. */
  Optional<SynonymRow> key(String written) {
    return word(KEYS, written);
  }

  /** Case, spaces, hyphens, dots and the number sign do not make another word. */
  static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_.#-]", "");
  }
}

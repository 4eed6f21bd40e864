package org.scantling.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.tables.SynonymRow;
import org.scantling.tables.WordForm;

/** What people write where a file has another word or another key for it. */
final class Synonyms {
  private static final String KEYS = "key";

  private final Map<String, SynonymRow> rows = new HashMap<>();

  Synonyms(List<SynonymRow> all) {
    for (SynonymRow row : all) {
      row.written().forEach(word -> rows.put(row.list() + " " + WordForm.of(word), row));
    }
  }

  /**
   * The row of a word.
   *
   * @param list the list or key whose words it is about
   */
  Optional<SynonymRow> word(String list, String written) {
    return Optional.ofNullable(rows.get(list + " " + WordForm.of(written)));
  }

  /** The row of a key that neither file has. */
  Optional<SynonymRow> key(String written) {
    return word(KEYS, written);
  }
}

package org.scantling.tables;

import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Source;

/**
 * What people write where a file has another word for it.
 *
 * @param list the list or key whose words it is about; {@code key} for the keys themselves
 * @param written what people write, in small letters with spaces
 * @param means the word that the file has; for keys paths, of which each kind of file has one;
 *     empty where none is right
 * @param says what has to be told: of a reading, what was assumed; where there is none, what to do
 */
public record SynonymRow(
    String id,
    String list,
    List<String> written,
    List<String> means,
    Optional<String> says,
    Source source,
    String note)
    implements TableRow {
  public SynonymRow {
    written = List.copyOf(written);
    means = List.copyOf(means);
  }

  static SynonymRow read(Row row) {
    String says = row.optional("says");
    return new SynonymRow(
        row.text("id"),
        row.text("list"),
        row.list("written"),
        row.optional("means").isEmpty() ? List.of() : row.list("means"),
        says.isEmpty() ? Optional.empty() : Optional.of(says),
        row.source(),
        row.optional("note"));
  }
}

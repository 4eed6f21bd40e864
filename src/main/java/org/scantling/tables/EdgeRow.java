package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * Something that people ask for and that lies outside the rules.
 *
 * @param keys the only keys under which the words mean this; none where they mean it anywhere
 * @param words what people call it in keys and values, in small letters with spaces
 * @param title what they call it in a title, where it is no more than a hint
 * @param because why it is outside, after "because"
 * @param whose whose work it is, after "this is for"
 */
public record EdgeRow(
    String id,
    List<String> keys,
    List<String> words,
    List<String> title,
    String because,
    String whose,
    Source source,
    String note)
    implements TableRow {
  public EdgeRow {
    keys = List.copyOf(keys);
    words = List.copyOf(words);
    title = List.copyOf(title);
  }

  static EdgeRow read(Row row) {
    return new EdgeRow(
        row.text("id"),
        maybe(row, "keys"),
        row.list("words"),
        maybe(row, "title"),
        row.text("because"),
        row.text("whose"),
        row.source(),
        row.optional("note"));
  }

  private static List<String> maybe(Row row, String column) {
    return row.optional(column).isEmpty() ? List.of() : row.list(column);
  }
}

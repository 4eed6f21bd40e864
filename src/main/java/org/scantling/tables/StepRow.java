package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * A line of the order of work; the rows stand in the order in which the work is done.
 *
 * @param occasions what must be true of the structure for the line to be told, all of them
 * @param part step, hold (a point at which nothing goes on before it is checked), safety, saving
 *     (work done once for many), or alone (how one person does it)
 * @param text what to do, with numbers in braces
 */
public record StepRow(
    String id, List<String> occasions, String part, String text, Source source, String note)
    implements TableRow {
  public StepRow {
    occasions = List.copyOf(occasions);
  }

  static StepRow read(Row row) {
    return new StepRow(
        row.text("id"),
        row.list("occasion"),
        row.oneOf("part", "step", "hold", "safety", "saving", "alone"),
        row.text("text"),
        row.source(),
        row.optional("note"));
  }
}

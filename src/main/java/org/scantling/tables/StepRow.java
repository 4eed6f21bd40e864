package org.scantling.tables;

import java.util.List;
import java.util.stream.Stream;
import org.scantling.reasons.Source;

/**
 * A line of the order of work; the rows stand in the order in which the work is done.
 *
 * @param occasions what must be true of the structure for the line to be told, all of them
 * @param part step, hold (a point at which nothing goes on before it is checked), safety, saving
 *     (work done once for many), or alone (how one person does it); or when it is done to keep up
 *     what stands
 * @param text what to do, with numbers in braces
 */
public record StepRow(
    String id, List<String> occasions, String part, String text, Source source, String note)
    implements TableRow {
  public StepRow {
    occasions = List.copyOf(occasions);
  }

  /** When something is done to keep up what stands, in the order in which a year goes. */
  public static final List<String> UPKEEP =
      List.of(
          "first-year",
          "each-spring",
          "each-winter",
          "after-storm",
          "each-five-years",
          "always-so");

  private static final List<String> BUILDING = List.of("step", "hold", "safety", "saving", "alone");

  /** True where it is done once the structure stands. */
  public boolean upkeep() {
    return UPKEEP.contains(part);
  }

  static StepRow read(Row row) {
    return new StepRow(
        row.text("id"),
        row.list("occasion"),
        row.oneOf("part", Stream.concat(BUILDING.stream(), UPKEEP.stream()).toArray(String[]::new)),
        row.text("text"),
        row.source(),
        row.optional("note"));
  }
}

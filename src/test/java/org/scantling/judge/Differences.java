package org.scantling.judge;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The table of the differences that are understood, each with its cause. */
final class Differences {
  private static final Path TABLE = Path.of("src", "test", "resources", "judge", "differences.csv");

  /**
   * One line of it.
   *
   * @param check which check
   * @param tags what the structure must be, all of them; none for any
   * @param from least that the printed ratio may be over the judge's
   * @param to most
   * @param cause why, for a reader
   * @param source what it may be looked up in
   */
  record Line(String check, Set<String> tags, double from, double to, String cause, String source) {
    boolean explains(String of, Set<String> structure, double over) {
      return check.equals(of) && structure.containsAll(tags) && over >= from && over <= to;
    }
  }

  private final List<Line> lines;

  Differences() {
    lines = Tables.read(TABLE).stream().map(Differences::line).toList();
  }

  private static Line line(Map<String, String> row) {
    String when = row.get("condition");
    return new Line(
        row.get("check"),
        when.isEmpty() ? Set.of() : Set.of(when.split(" ")),
        Double.parseDouble(row.get("printed_over_judge_from")),
        Double.parseDouble(row.get("printed_over_judge_to")),
        row.get("cause"),
        row.get("source"));
  }

  List<Line> lines() {
    return lines;
  }

  boolean explain(String check, Set<String> structure, double over) {
    return lines.stream().anyMatch(line -> line.explains(check, structure, over));
  }
}

package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.reasons.Checked;
import org.scantling.spans.SpanRow;
import org.scantling.spans.SpanTable;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.csv.CsvMapper;

/** A span table as comma-separated values, every assumption in a column of its own. */
public final class SpanCsv {
  private static final CsvMapper CSV = new CsvMapper();
  private static final List<String> ELSEWHERE = List.of("species", "grade", "designValues");

  private SpanCsv() {}

  public static String of(SpanTable table) {
    List<String> head =
        new ArrayList<>(
            List.of(
                "species",
                "grade",
                "size",
                SpanJson.stepKey(table),
                SpanJson.reachKey(table),
                "governs",
                "combination"));
    List<String> assumed = new ArrayList<>();
    ObjectNode assumptions = SpanJson.assumptions(table);
    for (String key : assumptions.propertyNames()) {
      if (!ELSEWHERE.contains(key)) {
        head.add(key);
        assumed.add(assumptions.get(key).isNull() ? "none" : assumptions.get(key).asString());
      }
    }
    List<List<String>> lines = new ArrayList<>(List.of(head));
    table.rows().forEach(row -> lines.add(cells(row, assumed)));
    return CSV.writeValueAsString(lines);
  }

  private static List<String> cells(SpanRow row, List<String> assumed) {
    List<String> cells =
        new ArrayList<>(
            List.of(
                row.timber().species(),
                row.timber().grade(),
                row.size().name(),
                SpanWords.plain(row.step().amount()),
                row.reach().map(reach -> SpanWords.plain(SpanJson.cut(reach.amount()))).orElse(""),
                row.stop().id(),
                row.stop().worked().map(Checked::combination).orElse("")));
    cells.addAll(assumed);
    return cells;
  }
}

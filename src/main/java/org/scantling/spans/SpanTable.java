package org.scantling.spans;

import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Source;

/**
 * Spans with everything they rest on.
 *
 * @param rows in the order of the request: timber, size, step
 * @param values sources of the design values that were read
 */
public record SpanTable(SpanRequest request, List<SpanRow> rows, List<Source> values) {
  public SpanTable {
    rows = List.copyOf(rows);
    values = List.copyOf(values);
  }

  /** The cell of a size, a timber and a step. */
  public SpanRow row(TimberGrade timber, TimberSize size, Measure step) {
    return rows.stream()
        .filter(each -> each.timber().equals(timber))
        .filter(each -> each.size().equals(size) && each.step().equals(step))
        .findFirst()
        .orElseThrow();
  }
}

package org.scantling.spans;

import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Cited;
import org.scantling.reasons.Source;

/**
 * One cell of a span table.
 *
 * @param step spacing, width, area or height of its column
 * @param reach longest clear span, greatest height, or greatest area; empty where there is none
 * @param stop what governs
 */
public record SpanRow(
    TimberGrade timber, TimberSize size, Measure step, Optional<Measure> reach, Stop stop) {

  /**
   * What stops a size.
   *
   * @param id the check, or where none was worked the row of a table or the table that has none
   * @param source standard and section, where something is behind it
   * @param worked the check at the reach, or at the least that was tried where nothing passes
   */
  public record Stop(String id, Optional<Source> source, Optional<Checked> worked) {
    static Stop at(Checked checked) {
      return new Stop(checked.id(), Optional.of(checked.source()), Optional.of(checked));
    }

    static Stop by(Cited row) {
      return new Stop(row.id(), Optional.of(row.source()), Optional.empty());
    }

    static Stop without(String table) {
      return new Stop(table, Optional.empty(), Optional.empty());
    }
  }
}

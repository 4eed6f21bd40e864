package org.scantling.visit;

import java.time.LocalDate;
import java.util.Optional;
import org.scantling.tables.DefaultWord;
import org.scantling.tables.Tables;

/** What an empty line means: written out, the day, or a row of the table of defaults. */
final class UsualAnswers {
  private static final String TABLE = "table:";
  private static final String WRITTEN = "=";
  private static final String TODAY = "today";

  private final Tables tables;
  private final LocalDate today;

  UsualAnswers(Tables tables, LocalDate today) {
    this.tables = tables;
    this.today = today;
  }

  /**
   * An answer, where there is one, and where it comes from.
   *
   * @param written true where the file says it all the same
   */
  record Usual(Optional<String> answer, String source, boolean written) {
    Usual(Optional<String> answer, String source) {
      this(answer, source, false);
    }
  }

  Usual of(String cell, String source) {
    if (cell.isEmpty()) {
      return new Usual(Optional.empty(), source);
    }
    if (cell.startsWith(WRITTEN)) {
      Usual plain = of(cell.substring(WRITTEN.length()), source);
      return new Usual(plain.answer(), source, true);
    }
    if (cell.equals(TODAY)) {
      return new Usual(Optional.of(today.toString()), source);
    }
    if (!cell.startsWith(TABLE)) {
      return new Usual(Optional.of(cell), source);
    }
    DefaultWord row =
        tables
            .defaults()
            .find(cell.substring(TABLE.length()))
            .orElseThrow(() -> new IllegalStateException("no default " + cell));
    return new Usual(Optional.of(row.word()), source);
  }
}

package org.scantling.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.Tables;

/** The questions of a visit in the order in which they are asked. */
public final class VisitRows {
  private static final String FILE = "words/visit-questions.csv";

  private final List<VisitRow> rows;

  private VisitRows(List<VisitRow> rows) {
    this.rows = rows;
  }

  /**
   * @param today the day on which they are asked
   * @throws IllegalStateException when a row cannot be what it says
   */
  public static VisitRows read(VisitKind kind, Tables tables, LocalDate today) {
    UsualAnswers usual = new UsualAnswers(tables, today);
    List<VisitRow> rows = new ArrayList<>();
    Set<String> before = new HashSet<>();
    for (WordRow cells : WordFile.read(FILE)) {
      VisitRow row = VisitRow.of(cells, usual);
      if (row.kind() == kind) {
        if (!before.containsAll(row.when().questions())) {
          throw new IllegalStateException(
              "rules/" + FILE + ": " + row.id() + ": asked when a later question says so");
        }
        if (!before.add(row.id())) {
          throw new IllegalStateException("rules/" + FILE + ": " + row.id() + " stands twice");
        }
        rows.add(row);
      }
    }
    return new VisitRows(List.copyOf(rows));
  }

  public List<VisitRow> all() {
    return rows;
  }

  Optional<VisitRow> find(String id) {
    return rows.stream().filter(each -> each.id().equals(id)).findFirst();
  }

  /** The parts of the visit, in order. */
  public List<String> sections() {
    return rows.stream().map(VisitRow::section).distinct().toList();
  }
}

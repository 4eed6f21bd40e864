package org.scantling.tables;

import java.util.LinkedHashMap;
import java.util.Map;
import org.scantling.reasons.Sight;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/** SOURCES.csv: what each key of a {@code source} column stands for. */
class Sources {
  private static final String PRACTICE = "practice";
  static final String[] STATUSES = {"seen", "second-hand", "memory", "none"};

  private final Map<String, String> citations;

  Sources(Map<String, String> citations) {
    this.citations = citations;
  }

  static Sources read(CsvFile file) {
    return new Sources(new LinkedHashMap<>()).and(file);
  }

  /** These sources and those of a further file, which may not mean an old key anew. */
  Sources and(CsvFile file) {
    int[] places = file.places(TableFile.SOURCES_COLUMNS, true);
    Map<String, String> all = new LinkedHashMap<>(citations);
    for (CsvFile.Line line : file.lines()) {
      String[] cells = file.arranged(line, places);
      for (int i = 0; i < cells.length; i++) {
        if (cells[i].isEmpty()) {
          throw new TableException(
              file.name(), line.number(), TableFile.SOURCES_COLUMNS[i], "", "a value");
        }
      }
      if (all.put(cells[0], cells[1]) != null) {
        throw new TableException(file.name(), line.number(), "key", cells[0], "each key once");
      }
    }
    return new Sources(all);
  }

  Map<String, String> citations() {
    return Map.copyOf(citations);
  }

  Source of(Row row, String prefix) {
    SourceKind kind = kind(row, prefix);
    String citation = citation(row, prefix);
    String status = row.oneOf(prefix.concat("status"), STATUSES);
    boolean practice = kind == SourceKind.COMMON_PRACTICE;
    if (practice != status.equals("none")) {
      throw row.refuse(
          prefix.concat("status"),
          practice ? "none, for common practice" : "seen, second-hand, memory");
    }
    if (practice != row.text(prefix.concat("source")).equals(PRACTICE)) {
      throw row.refuse(prefix.concat("source"), practice ? PRACTICE : "a document");
    }
    if (practice) {
      return new Source(kind, citation, false);
    }
    return new Source(
        kind, citation.concat(", ").concat(row.text(prefix.concat("where"))), Sight.of(status));
  }

  static SourceKind kind(Row row, String prefix) {
    return SourceKind.of(
        row.oneOf(prefix.concat("kind"), "standard", "handbook", "common-practice", "house-rule"));
  }

  String citation(Row row, String prefix) {
    String citation = citations.get(row.text(prefix.concat("source")));
    if (citation == null) {
      throw row.refuse(
          prefix.concat("source"),
          "a key of SOURCES.csv: " + String.join(", ", citations.keySet()));
    }
    return citation;
  }
}

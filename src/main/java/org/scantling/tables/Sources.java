package org.scantling.tables;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Sight;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/** SOURCES.csv: what each key of a {@code source} column stands for. */
class Sources {
  private static final String PRACTICE = "practice";
  private static final String STATICS = "statics";
  private static final Set<String> ALONE = Set.of(PRACTICE, STATICS);
  private static final String[] KINDS = {
    "standard", "handbook", "common-practice", "house-rule", "calculation"
  };
  static final String[] STATUSES = {"seen", "second-hand", "memory", "none"};

  private static final String[] COLUMNS = {"key", "citation"};

  private final Map<String, String> citations;

  Sources(Map<String, String> citations) {
    this.citations = citations;
  }

  static Sources read(CsvFile file) {
    return new Sources(new LinkedHashMap<>()).and(file);
  }

  /** These sources and those of a further file, which may not mean an old key anew. */
  Sources and(CsvFile file) {
    int[] places = file.places(COLUMNS, true);
    Map<String, String> all = new LinkedHashMap<>(citations);
    for (CsvFile.Line line : file.lines()) {
      String[] cells = file.arranged(line, places);
      for (int i = 0; i < cells.length; i++) {
        if (cells[i].isEmpty()) {
          throw new TableException(
              file.name(), line.number(), COLUMNS[i], "", RefusalWords.say("sources.value"));
        }
      }
      if (all.put(cells[0], cells[1]) != null) {
        throw new TableException(
            file.name(), line.number(), "key", cells[0], RefusalWords.say("sources.key"));
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
    Optional<String> alone = alone(kind);
    if (alone.isPresent() != status.equals("none")) {
      throw row.refuse(
          prefix.concat("status"),
          kind == SourceKind.COMMON_PRACTICE
              ? RefusalWords.say("sources.practice")
              : alone.isPresent()
                  ? RefusalWords.say("sources.calculation")
                  : "seen, second-hand, memory");
    }
    String source = row.text(prefix.concat("source"));
    if (alone.isPresent() ? !alone.get().equals(source) : ALONE.contains(source)) {
      throw row.refuse(
          prefix.concat("source"), alone.orElseGet(() -> RefusalWords.say("sources.document")));
    }
    if (alone.isPresent()) {
      return new Source(kind, citation, false);
    }
    return new Source(
        kind, citation.concat(", ").concat(row.text(prefix.concat("where"))), Sight.of(status));
  }

  /** The key of what no document stands behind. */
  private static Optional<String> alone(SourceKind kind) {
    return switch (kind) {
      case COMMON_PRACTICE -> Optional.of(PRACTICE);
      case CALCULATION -> Optional.of(STATICS);
      default -> Optional.empty();
    };
  }

  static SourceKind kind(Row row, String prefix) {
    return SourceKind.of(row.oneOf(prefix.concat("kind"), KINDS));
  }

  String citation(Row row, String prefix) {
    String citation = citations.get(row.text(prefix.concat("source")));
    if (citation == null) {
      throw row.refuse(
          prefix.concat("source"),
          RefusalWords.say("sources.known", "keys", String.join(", ", citations.keySet())));
    }
    return citation;
  }
}

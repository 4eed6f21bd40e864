package org.scantling.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Limit;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;

/**
 * Rows that bound one thing from both sides, told by how they are called: {@code x-least} with
 * {@code x-most} or {@code x-longest}, {@code x} with {@code x-most}, {@code x-from} with {@code
 * x-to}, {@code x-low} with {@code x-high}.
 */
final class BoundPairs {
  private static final Map<String, List<String>> PARTNERS = new LinkedHashMap<>();

  static {
    PARTNERS.put("most", List.of("least", ""));
    PARTNERS.put("longest", List.of("least", ""));
    PARTNERS.put("deepest", List.of("least-depth", "least"));
    PARTNERS.put("to", List.of("from"));
    PARTNERS.put("high", List.of("low"));
  }

  private BoundPairs() {}

  /**
   * @param low id of the row below
   * @param high id of the row above
   */
  record Pair(String low, double lowAmountRatio, String high, double highAmountRatio) {
    boolean crossed() {
      return lowAmountRatio > highAmountRatio;
    }
  }

  static List<Pair> in(Table<? extends TableRow> table) {
    List<Pair> pairs = new ArrayList<>();
    for (TableRow row : table.rows()) {
      if (row instanceof Limit high) {
        below(table, high).ifPresent(low -> pairs.add(pair(low, high)));
      }
    }
    return pairs;
  }

  private static Optional<Limit> below(Table<? extends TableRow> table, Limit high) {
    for (Map.Entry<String, List<String>> ending : PARTNERS.entrySet()) {
      for (String separator : List.of("-", ".")) {
        if (high.id().endsWith(separator + ending.getKey())) {
          String stem = high.id().substring(0, high.id().length() - ending.getKey().length() - 1);
          return partner(table, stem, separator, ending.getValue());
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Limit> partner(
      Table<? extends TableRow> table, String stem, String separator, List<String> endings) {
    return endings.stream()
        .map(ending -> ending.isEmpty() ? stem : stem + separator + ending)
        .flatMap(id -> table.find(id).stream())
        .filter(Limit.class::isInstance)
        .map(Limit.class::cast)
        .findFirst();
  }

  private static Pair pair(Limit low, Limit high) {
    return new Pair(low.id(), low.amount(), high.id(), high.amount());
  }
}

package org.scantling.tables;

import java.util.List;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Source;

/**
 * What a symbol of a calculation means.
 *
 * @param symbol as the formulas of {@code workings.csv} write it
 * @param scope how the ids of the rows begin in which it means that; empty where it does in all but
 *     those that another row of the same symbol names
 * @param part those rows in words; empty where the scope is
 * @param units in which its numbers are printed; none for one that has no name
 * @param source the standard that defines it, or statics
 */
public record SymbolRow(
    String id,
    String symbol,
    List<String> scope,
    String part,
    String means,
    List<Unit> units,
    Source source,
    String note)
    implements TableRow {
  public SymbolRow {
    scope = List.copyOf(scope);
    units = List.copyOf(units);
  }

  static SymbolRow read(Row row) {
    List<String> scope = row.optional("scope").isEmpty() ? List.of() : row.list("scope");
    if (scope.isEmpty() != row.optional("part").isEmpty()) {
      throw row.refuse("part", RefusalWords.say("symbols.part"));
    }
    return new SymbolRow(
        row.text("id"),
        row.text("symbol"),
        scope,
        row.optional("part"),
        row.text("means"),
        units(row),
        row.source(),
        row.optional("note"));
  }

  /** The units of a symbol, one or several; none where the cell is empty. */
  private static List<Unit> units(Row row) {
    return row.optional("unit").isEmpty()
        ? List.of()
        : row.list("unit").stream().map(word -> unit(row, word)).toList();
  }

  private static Unit unit(Row row, String word) {
    return UnitWords.printed(word)
        .orElseThrow(() -> row.refuse("unit", String.join(", ", UnitWords.allPrinted())));
  }

  /** True where it means this wherever nothing else is said of the same symbol. */
  public boolean everywhere() {
    return scope.isEmpty();
  }

  /** True where its scope names a row of {@code workings.csv}. */
  public boolean names(String working) {
    return scope.stream().anyMatch(each -> (working + ".").startsWith(each + "."));
  }
}

package org.scantling.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.scantling.tables.SymbolRow;

/**
 * Which symbols a formula shows, and what each of them means there.
 *
 * <p>A formula is told in symbols, then in numbers, then as a result, with an equals sign between;
 * what follows the first comma, semicolon or colon is a remark, which may have symbols too.
 */
final class FormulaSymbols {
  private static final Pattern SYMBOL = Pattern.compile("[A-Za-z][A-Za-z0-9]*['*]?");
  private static final Pattern REMARK = Pattern.compile("[,;:]");
  private static final String EQUALS = " = ";

  /** The numbers and the result. */
  private static final int SIDES_OF_NUMBERS = 2;

  private static final Comparator<SymbolRow> BY_LETTER =
      Comparator.comparing(SymbolRow::symbol, String.CASE_INSENSITIVE_ORDER)
          .thenComparing(SymbolRow::symbol)
          .thenComparing(SymbolRow::part);

  private final Map<String, List<SymbolRow>> bySymbol = new HashMap<>();

  FormulaSymbols(Collection<SymbolRow> rows) {
    rows.forEach(row -> bySymbol.computeIfAbsent(row.symbol(), key -> new ArrayList<>()).add(row));
  }

  /**
   * What a symbol means in a working; empty for a word that is none.
   *
   * @param working the id of a row of {@code workings.csv}
   */
  Optional<SymbolRow> meaning(String symbol, String working) {
    List<SymbolRow> rows = bySymbol.getOrDefault(symbol, List.of());
    return rows.stream()
        .filter(row -> row.names(working))
        .findFirst()
        .or(() -> rows.stream().filter(SymbolRow::everywhere).findFirst());
  }

  /**
   * The symbols of a formula.
   *
   * @param working the id of its row
   * @param formula with a sign that is no letter for every number
   */
  List<SymbolRow> of(String working, String formula) {
    Set<String> words = new LinkedHashSet<>(written(formula));
    words.addAll(remarked(formula));
    return words.stream().flatMap(word -> meaning(word, working).stream()).toList();
  }

  /** Every word of the part of a formula that is in symbols. */
  static List<String> written(String formula) {
    String[] sides = REMARK.split(formula, 2)[0].split(EQUALS);
    int symbolic = Math.max(1, sides.length - SIDES_OF_NUMBERS);
    return words(String.join(EQUALS, List.of(sides).subList(0, symbolic)));
  }

  /** Every word of its remarks. */
  static List<String> remarked(String formula) {
    String[] parts = REMARK.split(formula, 2);
    return parts.length > 1 ? words(parts[1]) : List.of();
  }

  private static List<String> words(String text) {
    return SYMBOL.matcher(text).results().map(MatchResult::group).toList();
  }

  /** By letter, capitals beside small ones; of a letter with two meanings part by part. */
  static List<SymbolRow> sorted(Collection<SymbolRow> rows) {
    return rows.stream().distinct().sorted(BY_LETTER).toList();
  }
}

package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.tables.CalculationRow;
import org.scantling.tables.SymbolRow;
import org.scantling.tables.Tables;

/** Every symbol of a formula is defined for it, once, and none is defined that no formula shows. */
class FormulaSymbolsTest {
  private static final Tables TABLES = Tables.load();
  private static final List<SymbolRow> ROWS = TABLES.symbols().rows();
  private static final FormulaSymbols SYMBOLS = new FormulaSymbols(ROWS);

  /** What stands among symbols and is none. */
  private static final Set<String> FUNCTIONS = Set.of("exp", "sin", "cos", "tan", "erf", "erfc");

  private static final Set<String> WORDS =
      Set.of("sum", "of", "loads", "by", "their", "factors", "with", "asked", "held");

  /** Units of the Canadian tables. */
  private static final Set<String> UNITS = Set.of("kPa");

  private static Stream<CalculationRow> workings() {
    return TABLES.workings().rows().stream();
  }

  private static Stream<String> formulas(CalculationRow row) {
    return Stream.of(row.formula(), row.metric())
        .filter(each -> !each.isEmpty())
        .map(FormulaSymbolsTest::everyPart);
  }

  /** With a mark for each blank, and with each part that some site turns on. */
  private static String everyPart(String formula) {
    return formula.replaceAll("\\{[^}]*}", "#").replaceAll("[\\[\\]]", "");
  }

  @Test
  void every_symbol_of_every_formula_is_defined_where_it_stands() {
    Set<String> undefined = new TreeSet<>();
    workings()
        .forEach(
            row ->
                formulas(row)
                    .flatMap(each -> FormulaSymbols.written(each).stream())
                    .filter(word -> !FUNCTIONS.contains(word) && !WORDS.contains(word))
                    .filter(word -> SYMBOLS.meaning(word, row.id()).isEmpty())
                    .forEach(word -> undefined.add(word + " of " + row.id())));
    assertThat(undefined).isEmpty();
  }

  /** A letter alone, a capital or a figure makes a symbol of what else would be a word. */
  @Test
  void every_symbol_of_every_remark_is_defined_where_it_stands() {
    Set<String> undefined = new TreeSet<>();
    workings()
        .forEach(
            row ->
                formulas(row)
                    .flatMap(each -> FormulaSymbols.remarked(each).stream())
                    .filter(word -> word.length() == 1 || word.matches(".*[A-Z0-9'*].*"))
                    .filter(word -> !word.equals("a") && !UNITS.contains(word))
                    .filter(word -> SYMBOLS.meaning(word, row.id()).isEmpty())
                    .forEach(word -> undefined.add(word + " of " + row.id())));
    assertThat(undefined).isEmpty();
  }

  @Test
  void no_word_of_a_remark_is_taken_for_a_symbol() {
    Set<String> english = Set.of("a", "an", "as", "at", "by", "in", "is", "no", "of", "on", "to");
    assertThat(ROWS).extracting(SymbolRow::symbol).doesNotContainAnyElementsOf(english);
    assertThat(ROWS).extracting(SymbolRow::symbol).doesNotContainAnyElementsOf(FUNCTIONS);
    assertThat(ROWS).extracting(SymbolRow::symbol).doesNotContainAnyElementsOf(WORDS);
  }

  @Test
  void nothing_is_defined_that_no_formula_shows() {
    Set<String> shown =
        workings()
            .flatMap(row -> formulas(row).flatMap(each -> SYMBOLS.of(row.id(), each).stream()))
            .map(SymbolRow::id)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(ROWS).extracting(SymbolRow::id).allMatch(shown::contains, "shown by a formula");
  }

  @Test
  void no_symbol_is_defined_twice_in_a_scope() {
    for (SymbolRow one : ROWS) {
      for (SymbolRow other : ROWS) {
        boolean alike = one != other && one.symbol().equals(other.symbol());
        assertThat(alike && one.everywhere() && other.everywhere()).as(one.symbol()).isFalse();
        if (alike) {
          assertThat(workings().filter(row -> one.names(row.id()) && other.names(row.id())))
              .as(one.symbol())
              .isEmpty();
        }
      }
    }
  }

  @Test
  void a_scope_names_workings_and_makes_a_difference() {
    for (SymbolRow each : ROWS) {
      for (String prefix : each.scope()) {
        assertThat(workings().filter(row -> (row.id() + ".").startsWith(prefix + ".")))
            .as(each.id())
            .isNotEmpty();
      }
      if (!each.everywhere()) {
        assertThat(ROWS.stream().filter(row -> row.symbol().equals(each.symbol())))
            .as(each.id() + ": with one meaning only, it needs no scope")
            .hasSizeGreaterThan(1);
      }
    }
  }

  @Test
  void a_formula_in_metric_shows_the_same_symbols() {
    workings()
        .filter(row -> !row.metric().isEmpty())
        .forEach(
            row ->
                assertThat(SYMBOLS.of(row.id(), everyPart(row.metric())))
                    .as(row.id())
                    .containsExactlyInAnyOrderElementsOf(
                        SYMBOLS.of(row.id(), everyPart(row.formula()))));
  }

  @Test
  void a_definition_is_a_phrase_that_stands_by_itself_among_others_sorted_by_letter() {
    assertThat(ROWS)
        .extracting(SymbolRow::means)
        .doesNotHaveDuplicates()
        .allMatch(text -> !text.endsWith("."), "without a stop")
        .noneMatch(text -> text.startsWith("the same") || text.startsWith("that "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "crossbeam.shear | V = w L/2 + Pp xe/L = # x # / 2 + # = # | L Pp V w xe",
        "wind.across.wall | p = qh G = # x # = # on the whole; epsilon = As/Ag = # / # | Ag As epsilon G p qh",
        "joint.used | uj = asked / held = # / # = # | uj",
        "header.moments | Mo = #; #; # | Mo",
        "wind.hill-low | K3 = exp(-gamma z/Lh) = 2.71828^(-# x # / #) = # | gamma K3 Lh z",
      })
  void symbols_are_read_from_the_sides_that_have_no_numbers_and_from_remarks(
      String working, String formula, String symbols) {
    assertThat(FormulaSymbols.sorted(SYMBOLS.of(working, formula)))
        .extracting(SymbolRow::symbol)
        .containsExactly(symbols.split(" "));
  }

  @Test
  void a_letter_means_what_it_means_where_it_stands() {
    assertThat(SYMBOLS.meaning("V", "wind.velocity-pressure").orElseThrow().means())
        .startsWith("basic wind speed");
    assertThat(SYMBOLS.meaning("V", "crossbeam.shear").orElseThrow().means()).startsWith("shear");
    assertThat(SYMBOLS.meaning("of", "crossbeam.load")).isEmpty();
  }
}

package org.scantling.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.sayings.Template;
import org.scantling.tables.CalculationRow;
import org.scantling.tables.SymbolRow;

/** Steps of a calculation, as they are said to one reader. */
public final class CalculationWords {
  /** Stands for a number where only symbols are looked for. */
  private static final String NUMBER = "#";

  private final Voice voice;
  private final CalculationNumbers numbers;

  private CalculationWords(Voice voice) {
    this.voice = voice;
    this.numbers = new CalculationNumbers(voice.units());
  }

  public static CalculationWords of(Voice voice) {
    return new CalculationWords(voice);
  }

  /** Whether a step of working belongs to a member or a question. */
  public boolean works(CalculationStep step, String role) {
    boolean others =
        step.evidence().find("member").filter(member -> !text(member).equals(role)).isPresent();
    return !others && voice.words().tables().workings().row(step.id()).roles().contains(role);
  }

  private static String text(Evidence.Seen seen) {
    return ((Evidence.Seen.Word) seen).text();
  }

  /** The heading under which a step of working stands. */
  public String part(CalculationStep step) {
    return template(voice.words().tables().workings().row(step.id()).part(), step);
  }

  /** What a step of working is about. */
  public String worked(CalculationStep step) {
    return template(voice.words().tables().workings().row(step.id()).statement(), step);
  }

  /** A step of working in symbols, then in numbers. */
  public String formula(CalculationStep step) {
    CalculationRow row = voice.words().tables().workings().row(step.id());
    boolean own = voice.units() == UnitSystem.METRIC && !row.metric().isEmpty();
    return template(own ? row.metric() : row.formula(), step);
  }

  /** The symbols that some steps of working show, by letter, each once for what it means there. */
  public List<SymbolRow> symbols(List<CalculationStep> steps) {
    FormulaSymbols symbols = voice.words().symbols();
    return FormulaSymbols.sorted(
        steps.stream()
            .flatMap(step -> symbols.of(step.id(), unnumbered(step)).stream())
            .distinct()
            .toList());
  }

  /** The same formula with a mark for each number. */
  private String unnumbered(CalculationStep step) {
    return new Template(voice.words().tables().workings().row(step.id()).formula())
        .filled(
            name ->
                name.equals("result")
                    ? Optional.of(NUMBER)
                    : step.evidence().find(name).map(CalculationWords::mark));
  }

  /** What only turns a part of a formula on leaves no mark. */
  private static String mark(Evidence.Seen seen) {
    return seen instanceof Evidence.Seen.Word word && word.text().isEmpty() ? "" : NUMBER;
  }

  /** The unit in which the numbers of a symbol are printed; empty for plain numbers. */
  public String unit(SymbolRow symbol) {
    return symbol.units().stream()
        .map(numbers::unit)
        .distinct()
        .collect(Collectors.joining(" or "));
  }

  private String template(String text, CalculationStep step) {
    return new Template(text)
        .filled(
            name ->
                name.equals("result")
                    ? Optional.of(numbers.say(step.result()))
                    : step.evidence().find(name).map(this::input));
  }

  private String input(Evidence.Seen seen) {
    if (seen instanceof Evidence.Seen.Amount amount) {
      String said = numbers.say(amount.measure());
      return amount.measure().amount() < 0 ? "(" + said + ")" : said;
    }
    return switch (seen.name()) {
      case "vine" -> voice.word("criteria.vine", text(seen));
      case "check" -> voice.reference(text(seen));
      default -> text(seen);
    };
  }
}

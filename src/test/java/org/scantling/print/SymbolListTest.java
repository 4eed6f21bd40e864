package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Proposal;
import org.scantling.tables.SymbolRow;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.Topic;
import org.scantling.words.Voice;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An engineer finds what a symbol means on the page that shows it. */
class SymbolListTest {
  private static final String HEADING = "Symbols";
  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9]*['*]?");
  private static final Pattern FIGURE = Pattern.compile("\\d+(\\.\\d+)?");

  /** A function of an angle is one number. */
  private static final Pattern ATOM =
      Pattern.compile("(sin|cos|tan)\\([^)]*\\)|" + WORD.pattern() + "|" + FIGURE.pattern());

  private static final Set<String> NO_SYMBOLS =
      Set.of(
          "exp", "sin", "cos", "tan", "sum", "of", "loads", "by", "their", "factors", "with",
          "asked", "held");

  @ParameterizedTest
  @CsvSource({
    "windy-hill, posts",
    "windy-hill, crossbeams",
    "windy-hill, headers",
    "windy-hill, footings",
    "windy-hill, joints",
    "stone-terrace, posts",
    "stone-terrace, joints",
    "on brackets, footings",
    "by freezing index, footings",
    "metric-country, headers",
    "everything-at-once, posts",
    "paired headers, headers",
  })
  void a_page_defines_exactly_the_symbols_that_its_formulas_show_each_once(
      String site, String subject) {
    Set<String> shown = new TreeSet<>();
    List<String> defined = new ArrayList<>();
    boolean among = false;
    for (Block block : page(site, subject, UnitSystem.IMPERIAL).blocks()) {
      if (block instanceof Block.Heading heading) {
        among = heading.text().equals(HEADING);
      } else if (among && block instanceof Block.Items items) {
        items.items().forEach(item -> defined.add(item.lead()));
      }
    }
    for (CalculationStep step : steps(site, subject)) {
      String[] sides =
          CalculationWords.of(voice(UnitSystem.IMPERIAL))
              .formula(step)
              .split("[,;:]")[0]
              .split(" = ");
      for (int side = 0; side < Math.max(1, sides.length - 2); side++) {
        words(sides[side]).filter(word -> !NO_SYMBOLS.contains(word)).forEach(shown::add);
      }
    }
    assertThat(shown).hasSizeGreaterThan(20);
    assertThat(defined).doesNotHaveDuplicates();
    Set<String> letters = new TreeSet<>();
    defined.forEach(lead -> letters.add(lead.split(",| \\(")[0]));
    assertThat(letters).containsAll(shown);
    letters.removeAll(shown);
    String remarks = String.join("\n", remarks(site, subject));
    assertThat(letters).allMatch(each -> words(remarks).anyMatch(each::equals), "in a remark");
  }

  private static List<String> remarks(String site, String subject) {
    List<String> remarks = new ArrayList<>();
    for (CalculationStep step : steps(site, subject)) {
      String[] parts =
          CalculationWords.of(voice(UnitSystem.IMPERIAL)).formula(step).split("[,;:]", 2);
      remarks.add(parts.length > 1 ? parts[1] : "");
    }
    return remarks;
  }

  private static Stream<String> words(String text) {
    return WORD.matcher(text).results().map(MatchResult::group);
  }

  @Test
  void a_letter_with_two_meanings_on_a_page_is_told_apart_by_the_part_that_it_belongs_to() {
    assertThat(text("windy-hill", "posts", UnitSystem.IMPERIAL))
        .contains("\n- V, lb: shear beside a support")
        .contains("\n- V, mph (wind): basic wind speed")
        .contains("\n- b, in: breadth of the section")
        .contains("\n- b, ft (foot in the ground): width with which the foot leans on the soil");
    assertThat(text("windy-hill", "crossbeams", UnitSystem.IMPERIAL))
        .contains("\n- b, in: breadth of the section")
        .doesNotContain("foot in the ground");
  }

  @Test
  void the_symbols_close_the_page_and_name_the_standard_that_defines_them() {
    String page = text("windy-hill", "posts", UnitSystem.IMPERIAL);
    String symbols = page.substring(page.indexOf("\n" + HEADING + "\n"));
    assertThat(symbols)
        .contains("- FcE, psi: stress at which the post buckles [NDS")
        .contains("- hp, in: height of the post above ground\n")
        .doesNotContain("statics");
    assertThat(symbols.substring(HEADING.length() + 1)).doesNotContain("----\n\n");
    assertThat(page.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_page_in_metric_tells_the_units_of_its_own_numbers() {
    assertThat(text("windy-hill", "posts", UnitSystem.METRIC))
        .contains("- b, m: breadth of the section")
        .contains("- fb, MPa: bending stress")
        .contains("- h, m: height above ground at which P acts");
  }

  @Test
  void a_page_without_a_calculation_has_no_symbols() {
    assertThat(text("windy-hill", "rhythm", UnitSystem.IMPERIAL)).doesNotContain(HEADING);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void what_a_line_comes_to_is_in_a_unit_of_the_symbol_that_it_works(UnitSystem units) {
    Voice voice = voice(units);
    Set<String> wrong = new TreeSet<>();
    int compared = 0;
    for (Proposal proposal : Demo.withRare()) {
      for (CalculationStep step : proposal.trace()) {
        String formula = CalculationWords.of(voice).formula(step);
        String worked = formula.substring(0, formula.indexOf(" = "));
        for (SymbolRow each : CalculationWords.of(voice).symbols(List.of(step))) {
          if (each.symbol().equals(worked)) {
            compared++;
            boolean same = each.units().stream().anyMatch(unit -> printed(unit, step, units));
            if (!same) {
              wrong.add(each.id() + " of " + step.id() + ": " + step.result().unit());
            }
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(5000);
    assertThat(wrong).isEmpty();
  }

  private static boolean printed(Unit unit, CalculationStep step, UnitSystem units) {
    Unit result = step.result().unit();
    return units == UnitSystem.METRIC
        ? unit.metricSymbol().replace("mm", "m").equals(result.metricSymbol().replace("mm", "m"))
        : unit.imperialSymbol().equals(result.imperialSymbol());
  }

  @Test
  void under_one_heading_a_letter_has_one_meaning() {
    Voice voice = voice(UnitSystem.IMPERIAL);
    Set<String> torn = new TreeSet<>();
    for (Proposal proposal : Demo.withRare()) {
      Map<String, Map<String, String>> byHeading = new HashMap<>();
      for (CalculationStep step : proposal.trace()) {
        Map<String, String> heading =
            byHeading.computeIfAbsent(
                CalculationWords.of(voice).part(step), key -> new HashMap<>());
        for (SymbolRow each : CalculationWords.of(voice).symbols(List.of(step))) {
          String before = heading.putIfAbsent(each.symbol(), each.id());
          if (before != null && !before.equals(each.id())) {
            torn.add(each.symbol() + " of " + CalculationWords.of(voice).part(step));
          }
        }
      }
    }
    assertThat(torn).isEmpty();
  }

  /** Most formulas are told number for number: what is beside a symbol is what it stands for. */
  @Test
  void in_one_formula_a_symbol_stands_for_one_number_and_a_figure_for_itself() {
    Voice voice = voice(UnitSystem.IMPERIAL);
    Set<String> wrong = new TreeSet<>();
    Set<String> told = new TreeSet<>();
    for (Proposal proposal : Demo.withRare()) {
      for (CalculationStep step : proposal.trace()) {
        String formula = CalculationWords.of(voice).formula(step);
        String[] sides = formula.split("[,;:]")[0].split(" = ");
        List<String> symbols = found(ATOM, sides[Math.max(0, sides.length - 3)]);
        List<String> numbers = found(FIGURE, sides[Math.max(0, sides.length - 2)]);
        if (sides.length > 2 && symbols.size() == numbers.size()) {
          told.add(step.id());
          Map<String, String> standsFor = new HashMap<>();
          for (int i = 0; i < symbols.size(); i++) {
            String symbol = symbols.get(i);
            String number = FIGURE.matcher(symbol).matches() ? symbol : numbers.get(i);
            String first = standsFor.merge(symbol, number, (old, other) -> old);
            if (Double.parseDouble(first) != Double.parseDouble(numbers.get(i))) {
              wrong.add(formula);
            }
          }
        }
      }
    }
    assertThat(told).hasSizeGreaterThan(150);
    assertThat(wrong).isEmpty();
  }

  private static List<String> found(Pattern what, String text) {
    return what.matcher(text).results().map(MatchResult::group).toList();
  }

  @Test
  void a_program_finds_every_symbol_of_every_step_beside_the_steps() {
    JsonNode root =
        JsonMapper.shared().readTree(ProposalJson.of(proposal("windy-hill"), Demo.words()));
    for (JsonNode step : root.get("workings")) {
      String left = step.get("formula").asString().split(" = ")[0];
      if (WORD.matcher(left).matches()) {
        List<JsonNode> found = new ArrayList<>();
        for (JsonNode symbol : root.get("symbols")) {
          if (symbol.get("symbol").asString().equals(left) && holds(symbol, step)) {
            found.add(symbol);
          }
        }
        JsonNode meant =
            found.stream()
                .filter(each -> !each.get("scope").isEmpty())
                .findFirst()
                .orElseGet(() -> found.get(0));
        assertThat(found.size()).as(left).isBetween(1, 2);
        assertThat(meant.get("unit").asString().split(" or "))
            .as(left + " of " + step.get("id").asString())
            .contains(step.get("unit").asString());
        assertThat(meant.get("means").asString()).isNotEmpty();
        assertThat(meant.get("source").get("citation").asString()).isNotEmpty();
      }
    }
  }

  private static boolean holds(JsonNode symbol, JsonNode step) {
    JsonNode scope = symbol.get("scope");
    for (JsonNode prefix : scope) {
      if ((step.get("id").asString() + ".").startsWith(prefix.asString() + ".")) {
        return true;
      }
    }
    return scope.isEmpty();
  }

  private static Proposal proposal(String site) {
    return Demo.proposal(site);
  }

  private static Voice voice(UnitSystem units) {
    return Demo.words().voice(Reader.ENGINEER, units);
  }

  private static List<CalculationStep> steps(String site, String subject) {
    Proposal proposal = proposal(site);
    return CalculationTrace.behind(
        topic(subject).questions().stream()
            .flatMap(question -> proposal.decision(question).stream())
            .toList(),
        proposal,
        voice(UnitSystem.IMPERIAL));
  }

  private static Topic topic(String subject) {
    return Demo.words().subjects().find(subject);
  }

  private static Page page(String site, String subject, UnitSystem units) {
    Told told = Told.to(Reader.ENGINEER, proposal(site), Demo.words(), units);
    return WhyPage.of(told, topic(subject), Optional.empty());
  }

  private static String text(String site, String subject, UnitSystem units) {
    return TextPage.print(page(site, subject, units), PrintOptions.plain(units));
  }
}

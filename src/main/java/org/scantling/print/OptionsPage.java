package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.sayings.Sayings;
import org.scantling.tables.OptionCountRow;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Whole structures side by side for the builder: what each is good at, and how to have it. */
final class OptionsPage {
  private static final Sayings SAYINGS = OptionWays.SAYINGS;

  private final WholeOptions options;
  private final Words words;
  private final Voice voice;
  private final OptionFigures figures;
  private final OptionWays ways;
  private final Page page = new Page();

  private OptionsPage(WholeOptions options, Words words, UnitSystem units) {
    this.options = options;
    this.words = words;
    this.voice = words.voice(Reader.BUILDER, units);
    this.figures = new OptionFigures(voice, units);
    this.ways = new OptionWays(options, words, voice, figures, SAYINGS);
  }

  static Page of(WholeOptions options, Words words, UnitSystem units) {
    OptionsPage page = new OptionsPage(options, words, units);
    page.write();
    return page.page;
  }

  private void write() {
    page.title(SAYINGS.say("title", "title", options.today().title()));
    page.paragraph(summary());
    if (options.shown().size() > 1 || (ways.proposed().isEmpty() && !options.shown().isEmpty())) {
      page.items(items());
      counts();
      comparison().writeLeading(page);
      howToHave();
      notes();
    }
  }

  private String summary() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("count", Integer.toString(options.shown().size()));
    blanks.put("tried", Integer.toString(options.tried()));
    blanks.put("sound", Integer.toString(options.sound()));
    if (options.today().result() instanceof Result.NeedsEngineer none) {
      blanks.put("demand", voice.path(none.demand()));
      blanks.put("why", Stopped.sourced(voice, none));
      return SAYINGS.say(refused(), blanks);
    }
    return SAYINGS.say(options.shown().size() == 1 ? "summary.alone" : "summary", blanks);
  }

  private String refused() {
    if (options.tried() == 0) {
      return "summary.nothing";
    }
    return options.shown().isEmpty() ? "summary.none" : "summary.refused";
  }

  private List<Block.Item> items() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < options.shown().size(); i++) {
      items.add(new Block.Item(SideBySide.letter(i), item(options.shown().get(i))));
    }
    return items;
  }

  private String item(WholeOption option) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("name", name(option));
    blanks.put("saves", Sentence.list(ways.saves(option)));
    blanks.put("gives", Sentence.list(ways.givesUp(option)));
    if (option.asProposed()) {
      return SAYINGS.say("option.proposed", blanks);
    }
    return SAYINGS.say(ways.proposed().isPresent() ? "option" : "option.refused", blanks);
  }

  private String name(WholeOption option) {
    String best = Sentence.list(ways.best(option));
    if (option.asProposed()) {
      return SAYINGS.say("named", "name", SAYINGS.say("name.proposed"), "best", best);
    }
    return best.isEmpty() ? SAYINGS.say("name.next") : Sentence.capital(best);
  }

  private void counts() {
    List<List<String>> grid = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    for (int i = 0; i < options.shown().size(); i++) {
      head.add(SideBySide.letter(i));
    }
    grid.add(head);
    for (OptionCountRow row : shownRows()) {
      OptionMeasure measure = row.measure();
      List<String> line = new ArrayList<>();
      line.add(SAYINGS.say("head." + measure.id(), "unit", figures.unit(measure)));
      options.shown().forEach(each -> line.add(figures.cell(measure, each)));
      grid.add(line);
      if (measure == OptionMeasure.LIFT) {
        List<String> hands = new ArrayList<>(List.of(SAYINGS.say("head.hands")));
        options.shown().forEach(each -> hands.add(OptionFigures.hands(each)));
        grid.add(hands);
      }
    }
    page.heading(SAYINGS.say("counts")).add(new Block.Grid(grid));
  }

  /** Room that nobody gives up is no line. */
  private List<OptionCountRow> shownRows() {
    return words.tables().optionCounts().rows().stream()
        .filter(
            row ->
                switch (row.measure()) {
                  case COST -> priced();
                  case CONCEDED ->
                      options.shown().stream().anyMatch(each -> each.measure(row.measure()) > 0);
                  case OTHER_TIMBER -> false;
                  default -> true;
                })
        .toList();
  }

  private boolean priced() {
    return options.shown().stream().anyMatch(each -> each.cost().isPresent());
  }

  /** Lines that can be copied as they are. */
  private void howToHave() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < options.shown().size(); i++) {
      WholeOption option = options.shown().get(i);
      if (!option.asProposed()) {
        lines.addAll(OptionWays.lines(SideBySide.letter(i), option));
      }
    }
    page.heading(SAYINGS.say("how")).add(new Block.Picture(lines));
  }

  private ComparisonGrid comparison() {
    List<ComparedSite> columns =
        options.shown().stream()
            .map(each -> new ComparedSite("", each.settings(), each.proposal(), Optional.empty()))
            .toList();
    return new ComparisonGrid(new SideBySide(columns, words), voice);
  }

  private void notes() {
    String rows = Integer.toString(words.tables().look().rows().size());
    page.paragraph(SAYINGS.say("counts.note", "rows", rows));
    Set<String> known = without(false);
    if (!known.isEmpty()) {
      page.paragraph(SAYINGS.say("counts.cost", "without", String.join(", ", known)));
    }
    Set<String> more = without(true);
    more.removeAll(known);
    if (!more.isEmpty()) {
      page.paragraph(SAYINGS.say("counts.cost-more", "without", String.join(", ", more)));
    }
    options
        .beaten()
        .map(WholeOption::settings)
        .ifPresent(by -> page.paragraph(SAYINGS.say("beaten", "letter", letter(by))));
    page.paragraph(SAYINGS.say("cautions"));
  }

  private String letter(List<String> settings) {
    return SideBySide.letter(
        options.shown().stream().map(WholeOption::settings).toList().indexOf(settings));
  }

  /**
   * What the costs leave out.
   *
   * @param unknown of those whose cost is not known, or of the others
   */
  private Set<String> without(boolean unknown) {
    Set<String> without = new LinkedHashSet<>();
    for (WholeOption each : options.shown()) {
      if (unknown == Double.isInfinite(each.measure(OptionMeasure.COST))) {
        each.cost().ifPresent(cost -> without.addAll(cost.without()));
      }
    }
    return without;
  }
}

package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Whole structures for the client to choose from, in plain words. */
final class ClientOptions {
  private static final Sayings SAYINGS = Sayings.of("client-options");

  private final WholeOptions options;
  private final OptionFigures figures;
  private final OptionWays ways;
  private final Page page = new Page();

  private ClientOptions(WholeOptions options, Words words, UnitSystem units) {
    this.options = options;
    Voice voice = words.voice(Reader.CLIENT, units);
    this.figures = new OptionFigures(voice, units);
    this.ways = new OptionWays(options, words, voice, figures, SAYINGS);
  }

  static Page of(WholeOptions options, Words words, UnitSystem units) {
    ClientOptions page = new ClientOptions(options, words, units);
    page.write();
    return page.page;
  }

  /** The same side by side, a row for each way; the first row is the head. */
  static Block.Grid grid(WholeOptions options, Words words, UnitSystem units) {
    return new ClientOptions(options, words, units).grid();
  }

  private Block.Grid grid() {
    boolean priced = options.shown().stream().anyMatch(each -> each.cost().isPresent());
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        Stream.of("way", "different", "gains", "takes", "posts", "hours", "price")
            .filter(each -> priced || !each.equals("price"))
            .map(each -> SAYINGS.say("column." + each))
            .toList());
    for (WholeOption option : options.shown()) {
      List<String> row = new ArrayList<>();
      row.add(name(option));
      row.add(Sentence.capital(Sentence.phrases(ways.changes(option))));
      row.add(Sentence.capital(Sentence.phrases(ways.saves(option))));
      row.add(Sentence.capital(Sentence.phrases(ways.givesUp(option))));
      row.add(figures.cell(OptionMeasure.HOLES, option));
      row.add(OptionFigures.decimals(option.measure(OptionMeasure.HOURS), 0));
      if (priced) {
        row.add(figures.cell(OptionMeasure.COST, option));
      }
      rows.add(row);
    }
    return new Block.Grid(rows);
  }

  private void write() {
    page.title(SAYINGS.say("title", "title", options.today().title()));
    page.paragraph(summary());
    for (int i = 0; i < options.shown().size(); i++) {
      WholeOption option = options.shown().get(i);
      page.heading(SAYINGS.say("heading", "letter", SideBySide.letter(i), "name", name(option)));
      page.paragraph(String.join(" ", sentences(option)));
    }
    if (!options.shown().isEmpty()) {
      page.paragraph(SAYINGS.say("cautions"));
    }
  }

  private String summary() {
    String tried = Integer.toString(options.tried());
    return switch (options.shown().size()) {
      case 0 -> SAYINGS.say("summary.none", "tried", tried);
      case 1 -> SAYINGS.say("summary.alone", "tried", tried);
      default -> SAYINGS.say("summary", "count", Integer.toString(options.shown().size()));
    };
  }

  private String name(WholeOption option) {
    if (option.asProposed()) {
      return SAYINGS.say("name.proposed");
    }
    List<String> best = ways.best(option);
    return best.isEmpty() ? SAYINGS.say("name.next") : best.get(0);
  }

  private List<String> sentences(WholeOption option) {
    List<String> said = new ArrayList<>();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("posts", figures.cell(OptionMeasure.HOLES, option));
    blanks.put("hours", OptionFigures.decimals(option.measure(OptionMeasure.HOURS), 0));
    said.add(SAYINGS.say("look", blanks));
    option.cost().ifPresent(cost -> said.add(price(option, cost)));
    say(said, "changes", "changes", ways.changes(option));
    say(said, "saves", "saves", ways.saves(option));
    say(said, "gives", "gives", ways.givesUp(option));
    return said;
  }

  /** Never part of a price as if it were all of it. */
  private static String price(WholeOption option, WholeOption.Cost cost) {
    if (cost.amount().isEmpty() || Double.isInfinite(option.measure(OptionMeasure.COST))) {
      return SAYINGS.say("price.unknown");
    }
    return SAYINGS.say(
        cost.without().isEmpty() ? "price" : "price.part", "cost", OptionFigures.money(cost));
  }

  private static void say(List<String> said, String saying, String blank, List<String> parts) {
    if (!parts.isEmpty()) {
      said.add(SAYINGS.say(saying, blank, Sentence.phrases(parts)));
    }
  }
}

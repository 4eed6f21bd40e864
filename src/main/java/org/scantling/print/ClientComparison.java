package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.scantling.design.Structure;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.AnswerWords;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** Several proposals side by side for the client: what each is like, what it costs, and why. */
final class ClientComparison {
  private static final Sayings SAYINGS = Sayings.of("comparison");
  private static final String NOTHING = "-";

  private final SideBySide comparison;
  private final Words words;
  private final UnitSystem units;
  private final Voice voice;
  private final Page page = new Page();

  private ClientComparison(List<ComparedSite> columns, Words words, UnitSystem units) {
    this.comparison = new SideBySide(columns, words);
    this.words = words;
    this.units = units;
    this.voice = words.voice(Reader.CLIENT, units);
  }

  static Page of(List<ComparedSite> columns, Words words, UnitSystem units) {
    ClientComparison page = new ClientComparison(columns, words, units);
    page.write();
    return page.page;
  }

  private void write() {
    int count = comparison.columns().size();
    page.title(SAYINGS.say("client.title", "count", Integer.toString(count)));
    page.paragraph(summary());
    page.items(key());
    page.heading(SAYINGS.say("client.like")).add(new Block.Grid(grid()));
    why();
    page.paragraph(SAYINGS.say("client.cautions"));
  }

  private String summary() {
    long built = comparison.columns().stream().filter(each -> each.proposal().proposed()).count();
    boolean all = built == comparison.columns().size();
    return SAYINGS.say(all ? "client.summary" : built > 0 ? "client.some" : "client.none");
  }

  private List<Block.Item> key() {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      ComparedSite column = comparison.columns().get(i);
      Map<String, String> blanks = new HashMap<>();
      blanks.put("title", column.proposal().title());
      if (!column.settings().isEmpty()) {
        blanks.put(
            "set",
            String.join("; ", column.settings().stream().map(each -> set(each, column)).toList()));
      }
      if (!column.proposal().proposed()) {
        blanks.put("refused", "");
      }
      items.add(new Block.Item(SideBySide.letter(i), SAYINGS.say("client.key", blanks)));
    }
    return items;
  }

  /** As a client is told what was given; of what nobody is told, as it was typed. */
  private String set(String setting, ComparedSite column) {
    String path = setting.replaceAll("[\\[=].*", "");
    return column.proposal().given().stream()
        .filter(each -> each.demand().path().equals(path))
        .map(voice::stated)
        .findFirst()
        .orElse(setting);
  }

  private List<List<String>> grid() {
    List<List<String>> grid = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    for (int i = 0; i < comparison.columns().size(); i++) {
      head.add(SideBySide.letter(i));
    }
    grid.add(head);
    measured(grid, "length", each -> inches(each.geometry().lengthIn()));
    measured(grid, "width", each -> inches(each.geometry().clearWidthIn()));
    measured(grid, "headroom", each -> inches(each.top().headroomIn()));
    measured(grid, "posts", each -> Integer.toString(each.geometry().postCount()));
    different(SubjectRow::place).forEach(row -> grid.add(line(row)));
    different(this::seen).forEach(row -> grid.add(line(row)));
    if (comparison.columns().stream().anyMatch(each -> each.figures().isPresent())) {
      grid.add(figures("figures.cost", ComparedSite.Figures::cost));
      grid.add(figures("figures.left-out", ComparedSite.Figures::leftOut));
      grid.add(figures("figures.hours", ComparedSite.Figures::hours));
    }
    return grid;
  }

  private void measured(List<List<String>> grid, String name, Function<Structure, String> measure) {
    List<String> line = new ArrayList<>(List.of(SAYINGS.say("client.row." + name)));
    for (ComparedSite column : comparison.columns()) {
      line.add(
          column.proposal().result() instanceof Result.Proposed built
              ? measure.apply(built.structure())
              : NOTHING);
    }
    grid.add(line);
  }

  private List<SubjectRow> different(Predicate<SubjectRow> which) {
    return comparison.rows().stream().filter(which).filter(comparison::differs).toList();
  }

  /** What one sees and what carries; what is measured off above, and what only follows, apart. */
  private boolean seen(SubjectRow row) {
    return !row.place()
        && !row.follows()
        && !row.joint()
        && (row.driver() || row.safety())
        && row.question() != Question.CLEAR_WIDTH
        && row.question() != Question.HEADROOM;
  }

  private List<String> line(SubjectRow row) {
    List<String> line = new ArrayList<>(List.of(Sentence.capital(row.client())));
    for (ComparedSite column : comparison.columns()) {
      line.add(
          comparison
              .decision(row, column)
              .map(each -> voice.say(each.question(), each.proposed()))
              .orElse(NOTHING));
    }
    return line;
  }

  private List<String> figures(String name, Function<ComparedSite.Figures, String> which) {
    List<String> line = new ArrayList<>(List.of(SAYINGS.say(name)));
    comparison.columns().forEach(each -> line.add(each.figures().map(which).orElse(NOTHING)));
    return line;
  }

  private void why() {
    List<Block.Item> why = new ArrayList<>();
    different(this::seen)
        .forEach(row -> why.add(new Block.Item(Sentence.capital(row.client()), reasons(row))));
    refused().ifPresent(why::add);
    if (!why.isEmpty()) {
      page.heading(SAYINGS.say("why")).items(why);
    }
  }

  /** Each answer with its reason; columns whose reason reads the same stand together. */
  private String reasons(SubjectRow row) {
    Map<String, List<String>> told = new LinkedHashMap<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      ComparedSite column = comparison.columns().get(i);
      String letter = SideBySide.letter(i);
      comparison
          .decision(row, column)
          .map(each -> reason(each, column))
          .ifPresent(each -> told.computeIfAbsent(each, key -> new ArrayList<>()).add(letter));
    }
    List<String> parts = new ArrayList<>();
    told.forEach((reason, letters) -> parts.add(Sentence.list(letters) + ": " + reason));
    return String.join(" ", parts);
  }

  private String reason(Decision decision, ComparedSite column) {
    String value =
        Sentence.capital(AnswerWords.of(voice).described(decision.question(), decision.proposed()));
    Told told = Told.to(Reader.CLIENT, column.proposal(), words, units);
    String because = new ClientWhy(told, Optional.empty()).because(decision);
    return SAYINGS.say("client.reason", "value", value, "why", because);
  }

  private Optional<Block.Item> refused() {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < comparison.columns().size(); i++) {
      if (comparison.columns().get(i).proposal().result() instanceof Result.NeedsEngineer none) {
        Map<String, String> blanks =
            Map.of("column", SideBySide.letter(i), "why", Stopped.sentences(voice, none));
        parts.add(SAYINGS.say("client.refused", blanks));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Item(SAYINGS.say("client.refused.name"), String.join(" ", parts)));
  }

  private String inches(double amountIn) {
    return voice.say(Measure.inches(amountIn));
  }
}

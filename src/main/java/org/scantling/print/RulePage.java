package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.rulebook.Figure;
import org.scantling.rulebook.RuleEntry;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** One rule in full. */
final class RulePage {
  private RulePage() {}

  static Page of(RuleEntry rule, Words words, UnitSystem units) {
    Page page = new Page().title(rule.id());
    page.paragraph(opening(rule, words));
    page.heading("Reads").items(plain(rule.reads()));
    if (!rule.figures().isEmpty()) {
      page.heading("Numbers").add(new Block.Grid(grid(rule.figures(), new FigureWords(units))));
    }
    List<Block.Item> said = new ArrayList<>();
    for (Reader reader : Reader.values()) {
      String name = Sentence.capital(reader.name().toLowerCase(Locale.ROOT));
      said.add(new Block.Item(name, rule.words().getOrDefault(reader, "no words")));
    }
    page.heading("Says").items(said);
    page.heading("Shown by").items(plain(rule.cases()));
    return page.paragraph("Written in rules/" + rule.place() + ".drl.");
  }

  private static String opening(RuleEntry rule, Words words) {
    Voices voices = new Voices(words);
    String asked =
        rule.questions().isEmpty()
            ? ""
            : Sentence.list(rule.questions().stream().map(voices::label).toList()) + ": ";
    return Sentence.capital(asked + rule.outcome())
        + ". It "
        + found(rule)
        + ". Behind it: "
        + FigureWords.source(rule.note().source())
        + ".";
  }

  private static String found(RuleEntry rule) {
    String words = rule.verdict().words();
    return words.startsWith("the answer") ? "says that " + words + " so much" : words;
  }

  private static List<Block.Item> plain(List<String> texts) {
    return texts.stream().map(text -> new Block.Item("", text)).toList();
  }

  private static List<List<String>> grid(List<Figure> figures, FigureWords told) {
    List<List<String>> grid = new ArrayList<>();
    grid.add(List.of("Row", "Value", "Says", "Source"));
    for (Figure figure : figures) {
      grid.add(
          List.of(
              figure.id(),
              told.value(figure),
              figure.words(),
              FigureWords.source(figure.source())));
    }
    return grid;
  }

  /** Names of questions. */
  record Voices(Words words) {
    String label(Question question) {
      return words.subjects().row(question).label(Reader.BUILDER);
    }
  }
}

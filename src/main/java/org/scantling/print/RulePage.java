package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.rulebook.Figure;
import org.scantling.rulebook.RuleEntry;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** One rule in full. */
final class RulePage {
  private static final Sayings SAYINGS = Sayings.of("rulebook");

  private RulePage() {}

  static Page of(RuleEntry rule, Words words, UnitSystem units) {
    Page page = new Page().title(rule.id());
    page.paragraph(opening(rule, words));
    page.heading(SAYINGS.say("reads")).items(plain(rule.reads()));
    if (!rule.figures().isEmpty()) {
      page.heading(SAYINGS.say("numbers"))
          .add(new Block.Grid(grid(rule.figures(), new FigureWords(units))));
    }
    List<Block.Item> said = new ArrayList<>();
    for (Reader reader : Reader.values()) {
      String name = SAYINGS.say("reader." + reader.name().toLowerCase(Locale.ROOT));
      String told = rule.words().getOrDefault(reader, SAYINGS.say("says.nothing"));
      said.add(new Block.Item(name, told));
    }
    page.heading(SAYINGS.say("says")).items(said);
    page.heading(SAYINGS.say("cases")).items(plain(rule.cases()));
    return page.paragraph(SAYINGS.say("written", "file", "rules/" + rule.place() + ".drl"));
  }

  private static String opening(RuleEntry rule, Words words) {
    Voices voices = new Voices(words);
    List<String> questions = rule.questions().stream().map(voices::label).toList();
    String finds = "finds." + rule.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
    Map<String, String> blanks = new HashMap<>();
    blanks.put("outcome", rule.outcome());
    if (!questions.isEmpty()) {
      blanks.put("questions", Sentence.list(questions));
    }
    blanks.put("finds", SAYINGS.say(finds));
    blanks.put("source", FigureWords.source(rule.note().source()));
    return Sentence.capital(SAYINGS.say("opening", blanks));
  }

  private static List<Block.Item> plain(List<String> texts) {
    return texts.stream().map(text -> new Block.Item("", text)).toList();
  }

  private static List<List<String>> grid(List<Figure> figures, FigureWords told) {
    List<List<String>> grid = new ArrayList<>();
    grid.add(
        List.of(
            SAYINGS.say("column.row"),
            SAYINGS.say("column.value"),
            SAYINGS.say("column.says"),
            SAYINGS.say("column.source")));
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

package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.rulebook.RuleEntry;
import org.scantling.rulebook.Rulebook;
import org.scantling.rulebook.Verdict;
import org.scantling.sayings.Sayings;
import org.scantling.words.Words;

/** All rules, question by question along the load path. */
final class RulesPage {
  private static final Sayings SAYINGS = Sayings.of("rulebook");

  private final Rulebook book;
  private final RulePage.Voices voices;
  private final FigureWords told;
  private final Page page = new Page();

  private RulesPage(Rulebook book, Words words, UnitSystem units) {
    this.book = book;
    this.voices = new RulePage.Voices(words);
    this.told = new FigureWords(units);
  }

  static Page of(Rulebook book, Words words, UnitSystem units) {
    RulesPage rules = new RulesPage(book, words, units);
    rules.page.title(SAYINGS.say("title"));
    rules.page.paragraph(
        SAYINGS.say(
            "all",
            "rules",
            Integer.toString(book.rules().size()),
            "questions",
            Integer.toString(Question.values().length)));
    for (Phase phase : Phase.values()) {
      for (Question question : Question.values()) {
        if (question.phase() == phase) {
          rules.question(question);
        }
      }
    }
    rules.section(SAYINGS.say("eased"), book.that(Verdict.EASES));
    rules.section(SAYINGS.say("refusals"), book.that(Verdict.REFUSES));
    rules.section(SAYINGS.say("cautions"), book.that(Verdict.TELLS));
    return rules.page;
  }

  /** Only the rules about some questions. */
  static Page of(List<Question> questions, Rulebook book, Words words, UnitSystem units) {
    RulesPage rules = new RulesPage(book, words, units);
    questions.forEach(rules::question);
    return rules.page;
  }

  private void question(Question question) {
    section(
        Sentence.capital(voices.label(question)) + " (" + question.id() + ")",
        book.about(question));
  }

  private void section(String heading, List<RuleEntry> rules) {
    List<Block.Item> items = new ArrayList<>();
    for (RuleEntry rule : rules) {
      items.add(new Block.Item(rule.id(), told(rule)));
    }
    if (!items.isEmpty()) {
      page.heading(heading).items(items);
    }
  }

  private String told(RuleEntry rule) {
    String numbers = told.brief(rule.figures());
    return rule.outcome()
        + (numbers.isEmpty()
            ? " (" + FigureWords.source(rule.note().source()) + ")."
            : ". " + numbers + ".");
  }
}

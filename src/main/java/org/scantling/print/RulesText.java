package org.scantling.print;

import java.util.List;
import org.scantling.reasons.Question;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.LintReport;
import org.scantling.rulebook.RuleEntry;
import org.scantling.rulebook.Rulebook;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** The rule base in words, as text or Markdown. */
public final class RulesText {
  private final Words words;
  private final PrintOptions options;
  private final boolean markdown;

  /**
   * @param markdown true for Markdown, false for plain text
   */
  public RulesText(Words words, PrintOptions options, boolean markdown) {
    this.words = words;
    this.options = options;
    this.markdown = markdown;
  }

  public String all(Rulebook book) {
    return print(RulesPage.of(book, words, options.units()));
  }

  public String about(List<Question> questions, Rulebook book) {
    return print(RulesPage.of(questions, book, words, options.units()));
  }

  public String one(RuleEntry rule) {
    return print(RulePage.of(rule, words, options.units()));
  }

  public String lint(LintReport report) {
    return print(LintPage.of(report));
  }

  public String agreement(Agreement agreement) {
    return print(AgreementPage.of(agreement, words.voice(Reader.BUILDER, options.units())));
  }

  private String print(Page page) {
    return markdown ? MarkdownPage.print(page) : TextPage.print(page, options);
  }
}

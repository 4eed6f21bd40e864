package org.scantling.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.intake.Intake;
import org.scantling.intake.NearMiss;
import org.scantling.quantity.Measure;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Decision;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.search.AnswerOptions;
import org.scantling.words.Choices;
import org.scantling.words.Topic;
import org.scantling.words.Words;

/** What it takes for an answer that is not today's: one that was typed, or the base's. */
final class KeptAnswer {
  private final Workplace workplace;
  private final Words words;
  private final Intake intake;

  KeptAnswer(Workplace workplace, Words words, Intake intake) {
    this.workplace = workplace;
    this.words = words;
    this.intake = intake;
  }

  /**
   * For the first choice of a topic that can be answered so.
   *
   * @throws WrongOption when none can
   */
  LeastChange least(Topic topic, String wanted) {
    Question question = question(topic, wanted.strip());
    Outcome value = question.numeric() ? number(question, wanted) : option(question, wanted);
    return workplace.leastChanges().of(intake.site(), intake.defaulted(), question, value);
  }

  /** The one that has the option; else the chief one, which will say what is wrong. */
  private Question question(Topic topic, String wanted) {
    Set<Question> about = words.choices().about(topic);
    List<Question> asked = topic.questions().stream().filter(about::contains).toList();
    return asked.stream()
        .filter(each -> options(each).contains(wanted))
        .findFirst()
        .or(() -> asked.stream().filter(this::chief).findFirst())
        .orElse(asked.get(0));
  }

  private boolean chief(Question question) {
    return words.choices().find(question).filter(Choices.Row::chief).isPresent();
  }

  /** For what the base has, where the chief decision of the topic is a size that changed. */
  Optional<LeastChange> base(Topic topic, Proposal proposal) {
    return proposal
        .decision(topic.questions().get(0))
        .filter(Decision::changed)
        .filter(each -> words.choices().find(each.question()).filter(Choices.Row::back).isPresent())
        .filter(each -> each.base().filter(base -> had(each.question(), base)).isPresent())
        .filter(each -> proposal.proposed())
        .map(
            each ->
                workplace
                    .leastChanges()
                    .singles(
                        intake.site(),
                        intake.defaulted(),
                        proposal,
                        each.question(),
                        each.base().orElseThrow()));
  }

  /** False for a size that the market of the site does not have. */
  private boolean had(Question question, Outcome base) {
    return !(base instanceof Outcome.Word word) || options(question).contains(word.text());
  }

  private List<String> options(Question question) {
    return new AnswerOptions(workplace.tables()).of(intake.site(), question);
  }

  private Outcome option(Question question, String wanted) {
    List<String> options = options(question);
    String plain = wanted.strip();
    if (options.isEmpty()) {
      throw new WrongOption(CommandWords.say("keep.open", "noun", noun(question)));
    }
    if (!options.contains(plain)) {
      throw new WrongOption(
          CommandWords.say(
              "keep.unknown",
              "wanted",
              CommandWords.found(plain),
              "noun",
              noun(question),
              "maybe",
              NearMiss.advice(plain, options),
              "options",
              String.join(", ", options)));
    }
    return question.counted()
        ? new Outcome.Amount(Measure.count(count(question, plain)))
        : new Outcome.Word(plain);
  }

  private Outcome number(Question question, String wanted) {
    if (question.unit() == Unit.COUNT) {
      return new Outcome.Amount(Measure.count(count(question, wanted)));
    }
    try {
      return new Outcome.Amount(new Measure(QuantityKind.LENGTH.parse(wanted), Unit.INCH));
    } catch (QuantityException wrong) {
      throw new WrongOption(
          CommandWords.say("keep.length", "noun", noun(question), "why", wrong.getMessage()));
    }
  }

  private int count(Question question, String wanted) {
    try {
      return Integer.parseUnsignedInt(wanted.strip());
    } catch (NumberFormatException wrong) {
      throw new WrongOption(
          CommandWords.say("keep.whole", "wanted", wanted.strip(), "noun", noun(question)));
    }
  }

  private String noun(Question question) {
    return words.choices().find(question).orElseThrow().noun();
  }
}

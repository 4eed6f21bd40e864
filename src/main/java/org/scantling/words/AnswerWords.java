package org.scantling.words;

import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.JointRow;
import org.scantling.tables.SizeRow;

/** Answers with more than their name, as they are said to one reader. */
public final class AnswerWords {
  private static final Sayings SAYINGS = Sayings.of("voice");

  private final Voice voice;

  private AnswerWords(Voice voice) {
    this.voice = voice;
  }

  public static AnswerWords of(Voice voice) {
    return new AnswerWords(voice);
  }

  /** The answer with what its name hides: a nominal size with its dressed dimensions. */
  public String detailed(Question question, Outcome outcome) {
    String said = voice.say(question, outcome);
    return outcome instanceof Outcome.Word word
        ? voice.words().options().dressed(word.text()).map(size -> dressed(said, size)).orElse(said)
        : said;
  }

  /** The same as a noun phrase for the client. */
  public String described(Question question, Outcome outcome) {
    String said = detailed(question, outcome);
    return voice.reader() == Reader.CLIENT
        ? voice.words().subjects().row(question).phrase().of(said)
        : said;
  }

  /** An answer with what it is an answer to: {@code crossbeams 2x6}. */
  public String member(Question question, Outcome outcome) {
    String said = voice.say(question, outcome);
    SubjectRow row = voice.words().subjects().row(question);
    return switch (voice.reader()) {
      case CLIENT -> row.phrase().of(said);
      case BUILDER -> row.builder() + " " + said;
      case ENGINEER -> question.id() + " = " + said;
    };
  }

  private String dressed(String said, SizeRow size) {
    String breadth = dressed(size.thicknessIn());
    String depth = dressed(size.widthIn());
    return SAYINGS.say(
        breadth.equals(depth) ? "dressed.square" : "dressed",
        Map.of("size", said, "breadth", breadth, "depth", depth));
  }

  /** A timber is told as it measures, to whomever. */
  private String dressed(double inches) {
    return voice.reader() == Reader.CLIENT
        ? new ClientNumbers(voice.units()).exact(inches)
        : voice.say(Measure.inches(inches));
  }

  /** True for an answer so plain that it is not worth a word where the base does not say it. */
  public boolean plain(Decision decision) {
    return decision.proposed() instanceof Outcome.Word word
        && (voice.words().tables().joints().find(word.text()).filter(JointRow::usual).isPresent()
            || plain(decision.question()).filter(word.text()::equals).isPresent());
  }

  /** The plain answer of a question that a base design does not speak of, where there is one. */
  public Optional<String> plain(Question question) {
    return voice.words().options().find("plain", question.id(), Reader.BUILDER);
  }

  /**
   * What is taken where the file leaves a path out that no question answers, if a word is needed.
   */
  public Optional<String> absent(String path) {
    return voice
        .words()
        .options()
        .find("absent", path, voice.reader())
        .or(() -> new ReadAs(voice.words().tables(), voice.reader()).say(path))
        .map(voice::metric);
  }
}

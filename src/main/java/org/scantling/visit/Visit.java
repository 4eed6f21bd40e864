package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.KeyReader;
import org.scantling.quantity.Measure;
import org.scantling.words.Sayings;

/**
 * The questions of a visit put to somebody: which comes next, and what an answer is taken for. The
 * first question that is to be asked and has no answer is always the next one, so that answers kept
 * from an earlier day go on where they ended.
 */
public final class Visit {
  private final VisitRows rows;
  private final KeyReader keys;
  private final VisitChoices choices;
  private final Sayings sayings;
  private final AnswerReading reading;
  private final LastLook last;

  /**
   * @param keys the reader of the file that comes of it
   * @param choices the words that answer questions, and how to tell them apart
   * @param last what looks at an answer besides, with all of them at hand
   */
  public Visit(VisitRows rows, KeyReader keys, VisitChoices choices, LastLook last) {
    this.rows = rows;
    this.keys = keys;
    this.choices = choices;
    this.sayings = Sayings.read("visit-words.csv");
    this.reading = new AnswerReading(keys, choices, sayings);
    this.last = last;
  }

  /** Says what is wrong with an answer that is right by itself. */
  @FunctionalInterface
  public interface LastLook {
    /**
     * @param visit whose question it is
     * @param row the question
     * @param answers all answers with this one
     * @return what is wrong, if anything
     */
    Optional<String> at(Visit visit, VisitRow row, VisitAnswers answers);
  }

  public Sayings sayings() {
    return sayings;
  }

  public List<String> sections() {
    return rows.sections();
  }

  /** The questions that these answers call for, in order. */
  public List<VisitRow> asked(VisitAnswers answers) {
    List<VisitRow> asked = new ArrayList<>();
    for (VisitRow row : rows.all()) {
      if (row.when().holds(id -> text(id, asked, answers))) {
        asked.add(row);
      }
    }
    return asked;
  }

  /** Only what is itself asked counts as an answer: one to a question that fell away does not. */
  private static Optional<String> text(String id, List<VisitRow> asked, VisitAnswers answers) {
    return asked.stream().anyMatch(row -> row.id().equals(id))
        ? answers.of(id).map(VisitAnswers.Given::text)
        : Optional.empty();
  }

  /** The next question; empty when all are answered. */
  public Optional<VisitRow> next(VisitAnswers answers) {
    return asked(answers).stream().filter(row -> answers.of(row.id()).isEmpty()).findFirst();
  }

  /** The words that answer a question, in the order of their numbers; none where it is not so. */
  public List<Choosable> choices(VisitRow row) {
    return choices.answer(row) ? choices.of(row).all() : List.of();
  }

  /** What helps to answer a question. */
  public List<String> help(VisitRow row) {
    List<String> help = new ArrayList<>(List.of(row.more()));
    choices.how(row).ifPresent(help::add);
    return help;
  }

  /**
   * Takes a line for the answer to a question, or says why not.
   *
   * @param typed the line; an empty one takes what was answered earlier, or the usual answer
   */
  public VisitTurn answer(VisitRow row, String typed, VisitAnswers before) {
    String plain = typed.strip();
    String line = plain.isEmpty() ? before.earlier().getOrDefault(row.id(), "") : plain;
    if (line.isEmpty() || line.equals(VisitRow.LEFT_OUT)) {
      return row.usual()
          .map(usual -> usual(row, usual, before))
          .orElseGet(() -> new VisitTurn.Refused(sayings.say("no-usual")));
    }
    AnswerReading.Kept kept = reading.read(row, line);
    return kept.answer()
        .map(answer -> told(row, answer, plain, before))
        .orElseGet(() -> new VisitTurn.Refused(kept.refusal()));
  }

  private VisitTurn usual(VisitRow row, String usual, VisitAnswers before) {
    VisitAnswers after = before.with(row.id(), new VisitAnswers.Given(usual, false));
    return last.at(this, row, after)
        .<VisitTurn>map(VisitTurn.Refused::new)
        .orElseGet(() -> new VisitTurn.Taken(after, Optional.empty()));
  }

  private VisitTurn told(VisitRow row, String answer, String typed, VisitAnswers before) {
    VisitAnswers after = before.with(row.id(), new VisitAnswers.Given(answer, true));
    List<VisitRow> asked = asked(after);
    return reading
        .refusal(row, asked, after)
        .or(() -> last.at(this, row, after))
        .<VisitTurn>map(VisitTurn.Refused::new)
        .orElseGet(() -> new VisitTurn.Taken(after, read(row, answer, typed, asked, after)));
  }

  private Optional<String> read(
      VisitRow row, String answer, String typed, List<VisitRow> asked, VisitAnswers after) {
    Optional<Measure> amount = reading.amount(row, asked, after);
    if (amount.isPresent()) {
      return Optional.of(WrittenBack.of(amount.get(), answer));
    }
    return answer.equals(typed) ? Optional.empty() : Optional.of(answer);
  }

  /** Without the last answer, which is then asked for again; empty at the first question. */
  public Optional<VisitAnswers> back(VisitAnswers answers) {
    List<VisitRow> done =
        asked(answers).stream().filter(row -> answers.of(row.id()).isPresent()).toList();
    return done.isEmpty()
        ? Optional.empty()
        : Optional.of(answers.without(done.get(done.size() - 1).id()));
  }

  /** Answers kept from an earlier day, without those that nothing would take any more. */
  public VisitAnswers stillGood(VisitAnswers kept) {
    VisitAnswers good = new VisitAnswers(Map.of(), kept.earlier());
    for (VisitRow row : rows.all()) {
      Optional<VisitAnswers.Given> given = kept.of(row.id());
      if (given.isPresent()) {
        good = again(row, given.get(), good);
      }
    }
    return good;
  }

  private VisitAnswers again(VisitRow row, VisitAnswers.Given given, VisitAnswers good) {
    if (!given.told()) {
      return row.usual().isPresent() ? good.with(row.id(), given) : good;
    }
    return answer(row, given.text(), good) instanceof VisitTurn.Taken taken
        ? taken.answers()
        : good;
  }

  /** What stands behind each key of the file, of what was told. */
  public Map<String, String> written(VisitAnswers answers) {
    return new KeySnippets(keys).of(asked(answers), answers);
  }

  KeyReader keys() {
    return keys;
  }
}

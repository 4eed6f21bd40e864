package org.scantling.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.KeyReader;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Tables;

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
  private final Tables tables;

  /**
   * @param keys the reader of the file that comes of it
   * @param choices the words that answer questions, and how to tell them apart
   * @param tables the sizes of timber
   * @param last what looks at an answer besides, with all of them at hand
   */
  public Visit(VisitRows rows, KeyReader keys, VisitChoices choices, Tables tables, LastLook last) {
    this.rows = rows;
    this.tables = tables;
    this.keys = keys;
    this.choices = choices;
    this.sayings = Sayings.of("visit");
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

  /** Every question, asked or not. */
  List<VisitRow> rows() {
    return rows.all();
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
      return emptyLine(row, before)
          .map(given -> take(row, given, plain, before))
          .orElseGet(() -> new VisitTurn.Refused(sayings.say("no-usual")));
    }
    AnswerReading.Kept kept = reading.read(row, line);
    VisitTurn turn =
        kept.answer()
            .map(answer -> new VisitAnswers.Given(answer, VisitAnswers.From.TOLD))
            .map(given -> take(row, given, line, before))
            .orElseGet(() -> new VisitTurn.Refused(kept.refusal()));
    return turn instanceof VisitTurn.Refused ? agreed(row, line, before).orElse(turn) : turn;
  }

  /** A yes to what is shown, where yes is no answer itself. */
  private Optional<VisitTurn> agreed(VisitRow row, String line, VisitAnswers before) {
    return agrees(line)
        ? emptyLine(row, before).map(given -> take(row, given, "", before))
        : Optional.empty();
  }

  private boolean agrees(String line) {
    return List.of(sayings.say("agree").split(" ")).contains(line.toLowerCase(Locale.ROOT));
  }

  /** What an empty line stands for. */
  private Optional<VisitAnswers.Given> emptyLine(VisitRow row, VisitAnswers before) {
    VisitAnswers.From usual =
        row.usualIsWritten() ? VisitAnswers.From.WORKED : VisitAnswers.From.USUAL;
    return worked(row, before)
        .map(each -> new VisitAnswers.Given(each.answer(), VisitAnswers.From.WORKED))
        .or(() -> row.usual().map(each -> new VisitAnswers.Given(each, usual)));
  }

  /** The answer to a question, where it follows from others. */
  public Optional<WorkedAnswer> worked(VisitRow row, VisitAnswers answers) {
    return workedOut(answers).of(row.id());
  }

  private WorkedOut workedOut(VisitAnswers answers) {
    List<VisitRow> asked = asked(answers);
    return new WorkedOut(tables, sayings, id -> text(id, asked, answers));
  }

  private VisitTurn take(
      VisitRow row, VisitAnswers.Given given, String typed, VisitAnswers before) {
    VisitAnswers after = before.with(row.id(), given);
    List<VisitRow> asked = asked(after);
    Optional<String> refusal =
        given.isWritten() ? reading.refusal(row, asked, after) : Optional.empty();
    return refusal
        .or(() -> last.at(this, row, after))
        .<VisitTurn>map(VisitTurn.Refused::new)
        .orElseGet(() -> new VisitTurn.Taken(after, read(row, given, typed, asked, after)));
  }

  private Optional<String> read(
      VisitRow row,
      VisitAnswers.Given given,
      String typed,
      List<VisitRow> asked,
      VisitAnswers after) {
    if (row.id().equals("crossbeam-count")) {
      return workedOut(after).spacing();
    }
    if (!given.told()) {
      return Optional.empty();
    }
    return reading
        .amount(row, asked, after)
        .map(amount -> WrittenBack.of(amount, given.text()))
        .or(() -> Optional.of(given.text()).filter(text -> !text.equals(typed)))
        .map(text -> sayings.say("read", "read", shown(row, text)));
  }

  private String shown(VisitRow row, String text) {
    return row.asks() == AskedAs.PIECES ? TimberPieces.ofKept(text).said(sayings) : text;
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
      boolean usual = given.isWritten() || row.usual().isPresent();
      return usual ? good.with(row.id(), given) : good;
    }
    return answer(row, given.text(), good) instanceof VisitTurn.Taken taken
        ? taken.answers()
        : good;
  }

  /** What stands behind each key of the file, of what was told. */
  public Map<String, String> written(VisitAnswers answers) {
    return new KeySnippets(keys).of(asked(answers), answers);
  }

  /** What a structure is told to have been through, an item a thing, as they stand in a file. */
  public List<String> record(VisitAnswers answers) {
    return new KeySnippets(keys).record(asked(answers), answers);
  }

  KeyReader keys() {
    return keys;
  }
}

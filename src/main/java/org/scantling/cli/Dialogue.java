package org.scantling.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.scantling.print.AskedText;
import org.scantling.sayings.Sayings;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitRow;
import org.scantling.visit.VisitTurn;

/**
 * Puts the questions of a visit to whoever answers, one at a time. After each answer everything
 * that was said so far is kept.
 */
final class Dialogue {
  private static final String SET_IN = "  ";

  private final Visit visit;
  private final KeptVisit kept;
  private final AnswerInput in;
  private final PrintWriter out;
  private final Sayings sayings;

  Dialogue(Visit visit, KeptVisit kept, AnswerInput in, PrintWriter out) {
    this.visit = visit;
    this.kept = kept;
    this.in = in;
    this.out = out;
    this.sayings = visit.sayings();
  }

  /** What a line leads to. */
  private sealed interface Step {
    /** On to the next question, or back to the one before. */
    record To(VisitAnswers answers) implements Step {}

    /** The same question again. */
    record Again() implements Step {}

    /** Out. */
    record Leave() implements Step {}
  }

  /**
   * Asks until all is answered.
   *
   * @param welcome the name of the saying that opens a visit
   * @return all answers, or empty where somebody left before
   * @throws WrongOption where nobody can answer again
   */
  Optional<VisitAnswers> run(String welcome) {
    VisitAnswers answers = resumed(welcome);
    QuestionPage page = new QuestionPage(visit, out);
    Optional<VisitRow> next = visit.next(answers);
    while (next.isPresent()) {
      page.print(next.get(), answers);
      if (!(turn(next.get(), answers) instanceof Step.To to)) {
        say(rest("left"));
        return Optional.empty();
      }
      answers = to.answers();
      kept.keep(answers);
      next = visit.next(answers);
    }
    return Optional.of(answers);
  }

  private VisitAnswers resumed(String welcome) {
    VisitAnswers before = kept.read();
    VisitAnswers good = visit.stillGood(before);
    if (kept.exists()) {
      say(sayings.say("resumed", "answers", String.valueOf(good.given().size())));
      before.given().keySet().stream()
          .filter(id -> good.of(id).isEmpty())
          .forEach(id -> say(sayings.say("dropped", "question", id)));
    } else {
      say(sayings.say(welcome));
    }
    return good;
  }

  /** One question, until a line brings the visit on or somebody leaves. */
  private Step turn(VisitRow row, VisitAnswers answers) {
    Step step = new Step.Again();
    while (step instanceof Step.Again) {
      out.print("> ");
      out.flush();
      Optional<String> line = in.line();
      if (line.isEmpty() || !in.isTerminal()) {
        out.println(line.orElse(""));
      }
      step = line.isPresent() ? step(row, line.get().strip(), answers) : end(row);
    }
    return step;
  }

  private Step step(VisitRow row, String line, VisitAnswers answers) {
    return switch (line) {
      case "?" -> {
        visit.help(row).forEach(each -> say(SET_IN + each));
        yield new Step.Again();
      }
      case "quit" -> new Step.Leave();
      case "back" -> back(answers);
      default -> answered(row, line, answers);
    };
  }

  private Step back(VisitAnswers answers) {
    Optional<VisitAnswers> before = visit.back(answers);
    if (before.isEmpty()) {
      say(SET_IN + sayings.say("first"));
      return new Step.Again();
    }
    return new Step.To(before.get());
  }

  private Step answered(VisitRow row, String line, VisitAnswers answers) {
    VisitTurn turn = visit.answer(row, line, answers);
    if (turn instanceof VisitTurn.Taken taken) {
      taken.read().ifPresent(read -> say(SET_IN + read));
      return new Step.To(taken.answers());
    }
    String why = ((VisitTurn.Refused) turn).why();
    if (!in.isTerminal()) {
      throw wrong(in.place(), row, why);
    }
    say(SET_IN + why);
    return new Step.Again();
  }

  private Step end(VisitRow row) {
    if (in.isTerminal()) {
      return new Step.Leave();
    }
    throw wrong(in.place() + 1, row, sayings.say("ended", "question", row.question()));
  }

  private WrongOption wrong(int line, VisitRow row, String why) {
    return new WrongOption("answers:" + line + ": " + row.id() + ": " + why + "\n" + rest("kept"));
  }

  private String rest(String saying) {
    return kept.exists()
        ? sayings.say(saying, "file", kept.file().toString())
        : sayings.say("nothing-kept");
  }

  private void say(String line) {
    out.println(AskedText.of(line, 0));
  }
}

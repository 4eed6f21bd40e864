package org.scantling.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.print.AskedText;
import org.scantling.visit.Choosable;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitRow;
import org.scantling.visit.VisitTurn;
import org.scantling.words.Sayings;

/**
 * Puts the questions of a visit to whoever answers, one at a time. After each answer everything that
 * was said so far is kept.
 */
final class Dialogue {
  private static final String SET_IN = "  ";
  private static final int NUMBER_WIDTH = 3;

  private final Visit visit;
  private final KeptVisit kept;
  private final AnswerInput in;
  private final PrintWriter out;
  private final Sayings sayings;
  private final List<String> sections;
  private String section = "";

  Dialogue(Visit visit, KeptVisit kept, AnswerInput in, PrintWriter out) {
    this.visit = visit;
    this.kept = kept;
    this.in = in;
    this.out = out;
    this.sayings = visit.sayings();
    this.sections = visit.sections();
  }

  /**
   * Asks until all is answered.
   *
   * @return all answers, or empty where somebody left before
   * @throws WrongOption where nobody can answer again
   */
  Optional<VisitAnswers> run() {
    VisitAnswers answers = resumed();
    Optional<VisitRow> next = visit.next(answers);
    while (next.isPresent()) {
      ask(next.get(), answers);
      Optional<VisitAnswers> after = turn(next.get(), answers);
      if (after.isEmpty()) {
        return Optional.empty();
      }
      answers = after.get();
      kept.keep(answers);
      next = visit.next(answers);
    }
    return Optional.of(answers);
  }

  private VisitAnswers resumed() {
    VisitAnswers before = kept.read();
    VisitAnswers good = visit.stillGood(before);
    if (kept.exists()) {
      say(sayings.say("resumed", "answers", String.valueOf(good.given().size())));
      before.given().keySet().stream()
          .filter(id -> good.of(id).isEmpty())
          .forEach(id -> say(sayings.say("dropped", "question", id)));
    } else {
      say(sayings.say("welcome"));
    }
    return good;
  }

  /** One question, until a line brings the visit on; empty where somebody leaves. */
  private Optional<VisitAnswers> turn(VisitRow row, VisitAnswers answers) {
    while (true) {
      out.print("> ");
      out.flush();
      Optional<String> line = in.line();
      if (!in.isTerminal()) {
        out.println(line.orElse(""));
      }
      if (line.isEmpty()) {
        return end(row);
      }
      Optional<Optional<VisitAnswers>> done = taken(row, line.get().strip(), answers);
      if (done.isPresent()) {
        return done.get();
      }
    }
  }

  private Optional<Optional<VisitAnswers>> taken(VisitRow row, String line, VisitAnswers answers) {
    switch (line) {
      case "?" -> {
        visit.help(row).forEach(each -> say(SET_IN + each));
        return Optional.empty();
      }
      case "quit" -> {
        say(sayings.say("left", "file", kept.file().toString()));
        return Optional.of(Optional.empty());
      }
      case "back" -> {
        Optional<VisitAnswers> before = visit.back(answers);
        if (before.isEmpty()) {
          say(SET_IN + sayings.say("first"));
        }
        return before.map(Optional::of);
      }
      default -> {
        return answered(row, line, answers);
      }
    }
  }

  private Optional<Optional<VisitAnswers>> answered(
      VisitRow row, String line, VisitAnswers answers) {
    VisitTurn turn = visit.answer(row, line, answers);
    if (turn instanceof VisitTurn.Taken taken) {
      taken.read().ifPresent(read -> say(SET_IN + sayings.say("read", "read", read)));
      return Optional.of(Optional.of(taken.answers()));
    }
    String why = ((VisitTurn.Refused) turn).why();
    if (!in.isTerminal()) {
      throw new WrongOption(
          "answers:" + in.place() + ": " + row.id() + ": " + why + "\n" + kept(row));
    }
    say(SET_IN + why);
    return Optional.empty();
  }

  private Optional<VisitAnswers> end(VisitRow row) {
    if (in.isTerminal()) {
      out.println();
      say(sayings.say("left", "file", kept.file().toString()));
      return Optional.empty();
    }
    throw new WrongOption(
        "answers:"
            + in.place()
            + ": "
            + row.id()
            + ": "
            + sayings.say("ended", "question", row.question())
            + "\n"
            + kept(row));
  }

  private String kept(VisitRow row) {
    return kept.exists()
        ? sayings.say("kept", "file", kept.file().toString(), "question", row.id())
        : sayings.say("nothing-kept");
  }

  private void ask(VisitRow row, VisitAnswers answers) {
    out.println();
    if (!row.section().equals(section)) {
      section = row.section();
      head();
    }
    say(row.question());
    say(SET_IN + row.why());
    int number = 1;
    for (Choosable each : visit.choices(row)) {
      String lead = String.format(Locale.ROOT, "%" + NUMBER_WIDTH + "d ", number++);
      out.println(AskedText.of(lead + each.word() + says(each), NUMBER_WIDTH + 1));
    }
    hint(row, answers).ifPresent(each -> say(SET_IN + each));
  }

  private static String says(Choosable each) {
    return each.says().isEmpty() ? "" : ": " + each.says();
  }

  private void head() {
    String heading =
        sayings.say(
            "section",
            "name",
            section,
            "place",
            String.valueOf(sections.indexOf(section) + 1),
            "all",
            String.valueOf(sections.size()));
    out.println(heading);
    out.println("-".repeat(heading.length()));
  }

  /** What an empty line means, and in which units. */
  private Optional<String> hint(VisitRow row, VisitAnswers answers) {
    String earlier = answers.earlier().get(row.id());
    if (earlier != null) {
      return Optional.of(sayings.say("hint-earlier", "answer", earlier));
    }
    String unit = row.unit();
    if (row.usual().isEmpty()) {
      return unit.isEmpty() ? Optional.empty() : Optional.of(sayings.say("hint-unit", "unit", unit));
    }
    String usual =
        row.usual().get().equals("-")
            ? row.source()
            : row.usual().get() + (row.source().isEmpty() ? "" : ", " + row.source());
    return Optional.of(
        unit.isEmpty()
            ? sayings.say("hint-usual", "usual", usual)
            : sayings.say("hint-usual-unit", "usual", usual, "unit", unit));
  }

  private void say(String line) {
    out.println(AskedText.of(line, 0));
  }
}

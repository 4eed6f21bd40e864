package org.scantling.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.print.AskedText;
import org.scantling.sayings.Sayings;
import org.scantling.visit.AskedAs;
import org.scantling.visit.Choosable;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitRow;
import org.scantling.visit.WorkedAnswer;

/** Prints one question: what it is, why it matters, what may be answered. */
final class QuestionPage {
  private static final String SET_IN = "  ";
  private static final int HANGING = 4;

  private final Visit visit;
  private final PrintWriter out;
  private final Sayings sayings;
  private String section = "";

  QuestionPage(Visit visit, PrintWriter out) {
    this.visit = visit;
    this.out = out;
    this.sayings = visit.sayings();
  }

  void print(VisitRow row, VisitAnswers answers) {
    out.println();
    if (!row.section().equals(section)) {
      section = row.section();
      head();
    }
    say(row.question());
    say(SET_IN + row.why());
    List<Choosable> choices = visit.choices(row);
    for (int i = 0; i < choices.size(); i++) {
      choice(i + 1, choices.get(i));
    }
    if (row.asks() == AskedAs.BASE && choices.isEmpty()) {
      say(SET_IN + sayings.say("no-base"));
    }
    hint(row, answers).ifPresent(each -> say(SET_IN + each));
  }

  private void choice(int number, Choosable each) {
    String lead = String.format(Locale.ROOT, "%3d ", number);
    String says = each.says().isEmpty() ? "" : ": " + each.says();
    out.println(AskedText.of(lead + each.word() + says, HANGING));
  }

  private void head() {
    List<String> sections = visit.sections();
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
    String unit = row.unit();
    String earlier = answers.earlier().get(row.id());
    if (earlier != null) {
      String hint = row.usual().isPresent() ? "hint-earlier-usual" : "hint-earlier";
      return Optional.of(sayings.say(hint, "answer", earlier));
    }
    Optional<WorkedAnswer> worked = visit.worked(row, answers);
    if (worked.isPresent()) {
      return Optional.of(
          sayings.say("hint-worked", "answer", worked.get().answer(), "how", worked.get().how()));
    }
    if (row.usual().isEmpty()) {
      return unit.isEmpty()
          ? Optional.empty()
          : Optional.of(sayings.say("hint-unit", "unit", unit));
    }
    return Optional.of(
        unit.isEmpty()
            ? sayings.say("hint-usual", "usual", row.usualSaid())
            : sayings.say("hint-usual-unit", "usual", row.usualSaid(), "unit", unit));
  }

  private void say(String line) {
    out.println(AskedText.of(line, 0));
  }
}

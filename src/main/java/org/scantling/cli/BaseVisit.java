package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.DesignIntake;
import org.scantling.intake.IntakeException;
import org.scantling.intake.KeyReader;
import org.scantling.intake.OutsideException;
import org.scantling.intake.Vocabulary;
import org.scantling.print.AskedText;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitChoices;
import org.scantling.visit.VisitKind;
import org.scantling.visit.VisitRow;
import org.scantling.visit.VisitRows;
import org.scantling.visit.VisitText;
import org.scantling.words.ClosedLists;

/** A visit to a structure that stands: asks, and writes the design file. */
final class BaseVisit {
  private final Path file;
  private final Workplace workplace;
  private final GeneralOptions general;

  BaseVisit(Path file, Workplace workplace, GeneralOptions general) {
    this.file = file;
    this.workplace = workplace;
    this.general = general;
  }

  void run(AnswerInput in, PrintWriter out) {
    Visit visit = visit(in.today());
    Sayings sayings = visit.sayings();
    String comment = sayings.say("kept-comment-base", "file", file.getFileName().toString());
    KeptVisit kept = new KeptVisit(file, comment);
    Optional<VisitAnswers> answers = new Dialogue(visit, kept, in, out).run("welcome-base");
    if (answers.isEmpty()) {
      return;
    }
    String text = VisitText.of(visit, answers.get());
    DesignIntake intake = workplace.readDesign(KeyReader.text(file, text));
    WholeFile.write(file, text);
    kept.remove();
    out.println();
    out.println(AskedText.of(sayings.say("written-base", "file", file.toString()), 0));
    if (intake.design().proven().isEmpty()) {
      out.println(sayings.say("drawing"));
    }
    out.println();
    NextCommands.print(sayings, file, next(intake), out);
  }

  private static List<String> next(DesignIntake intake) {
    return intake.design().proven().isPresent()
        ? List.of("next-start", "next-record")
        : List.of("next-start");
  }

  private Visit visit(LocalDate today) {
    KeyReader keys = KeyReader.ofDesign(Vocabulary.of(workplace.tables()));
    ClosedLists lists = ClosedLists.of(workplace.tables(), general.units(UnitSystem.IMPERIAL));
    return new Visit(
        VisitRows.read(VisitKind.BASE, workplace.tables(), today),
        keys,
        new VisitChoices(keys, lists, Map.of()),
        workplace.tables(),
        this::wrong);
  }

  /** As soon as nothing is missing the reader of the file can be asked about all of it. */
  private Optional<String> wrong(Visit visit, VisitRow row, VisitAnswers answers) {
    try {
      workplace.readDesign(KeyReader.text(file, VisitText.of(visit, answers)));
      return Optional.empty();
    } catch (OutsideException outside) {
      return Optional.of(RefusedFile.words(outside, file));
    } catch (IntakeException refused) {
      return visit.next(answers).isPresent() && refused.isIncomplete()
          ? Optional.empty()
          : Optional.of(RefusedFile.words(refused, file));
    }
  }
}

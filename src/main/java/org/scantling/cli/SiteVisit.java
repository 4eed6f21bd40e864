package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.DesignReader;
import org.scantling.intake.Intake;
import org.scantling.intake.IntakeException;
import org.scantling.intake.KeyReader;
import org.scantling.intake.OutsideException;
import org.scantling.intake.Vocabulary;
import org.scantling.print.AskedText;
import org.scantling.print.ProposalOpening;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.sayings.Sayings;
import org.scantling.visit.Visit;
import org.scantling.visit.VisitAnswers;
import org.scantling.visit.VisitChoices;
import org.scantling.visit.VisitKind;
import org.scantling.visit.VisitRow;
import org.scantling.visit.VisitRows;
import org.scantling.visit.VisitText;
import org.scantling.words.ClosedLists;
import org.scantling.words.Words;

/** A visit to a place: asks, writes the site file, and tells what would be built there. */
final class SiteVisit {
  private static final String BASE = "base";

  private final Path file;
  private final List<Path> from;
  private final Workplace workplace;
  private final GeneralOptions general;

  SiteVisit(Path file, List<Path> from, Workplace workplace, GeneralOptions general) {
    this.file = file;
    this.from = List.copyOf(from);
    this.workplace = workplace;
    this.general = general;
  }

  void run(AnswerInput in, PrintWriter out) {
    Visit visit = visit(in.today());
    Sayings sayings = visit.sayings();
    KeptVisit kept = new KeptVisit(file, sayings.say("kept-comment", "file", name()));
    Optional<VisitAnswers> answers = new Dialogue(visit, kept, in, out).run("welcome");
    if (answers.isEmpty()) {
      return;
    }
    String text = VisitText.of(visit, answers.get());
    Intake intake = workplace.read(KeyReader.text(file, text));
    WholeFile.write(file, text);
    kept.remove();
    out.println();
    out.println(AskedText.of(sayings.say("written", "file", file.toString()), 0));
    out.println();
    out.print(opening(intake));
    out.println();
    NextCommands.print(
        sayings, file, List.of("next-propose", "next-out", "next-why", "next-limits"), out);
  }

  private String opening(Intake intake) {
    Proposal proposal = workplace.propose(intake);
    return ProposalOpening.of(
        proposal, Words.load(workplace.tables()), general.printing(SiteOptions.written(intake)));
  }

  private Visit visit(LocalDate today) {
    Vocabulary vocabulary = Vocabulary.of(workplace.tables());
    KeyReader keys = KeyReader.ofSite(vocabulary);
    BaseOffers offers = new BaseOffers(file, new DesignReader(vocabulary), Sayings.of("visit"));
    VisitChoices choices =
        new VisitChoices(
            keys,
            ClosedLists.of(workplace.tables(), general.units(UnitSystem.IMPERIAL)),
            Map.of(BASE, offers.in(from)));
    VisitRows rows = VisitRows.read(VisitKind.SITE, workplace.tables(), today);
    return new Visit(rows, keys, choices, workplace.tables(), this::wrong);
  }

  /** With the base the file is whole, and its reader can be asked about all of it. */
  private Optional<String> wrong(Visit visit, VisitRow row, VisitAnswers answers) {
    if (!row.id().equals(BASE)) {
      return Optional.empty();
    }
    try {
      workplace.read(KeyReader.text(file, VisitText.of(visit, answers)));
      return Optional.empty();
    } catch (OutsideException outside) {
      return Optional.of(RefusedFile.words(outside, file));
    } catch (IntakeException refused) {
      return Optional.of(RefusedFile.words(refused, file));
    }
  }

  private String name() {
    return file.getFileName().toString();
  }
}

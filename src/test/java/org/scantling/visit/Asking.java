package org.scantling.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.KeyReader;
import org.scantling.intake.Vocabulary;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Tables;
import org.scantling.words.ClosedLists;

/** Visits of which nothing but the base is looked at besides. */
final class Asking {
  static final Tables TABLES = Tables.load();
  static final LocalDate TODAY = LocalDate.of(2026, 5, 3);

  private Asking() {}

  static KeyReader keys(VisitKind kind) {
    Vocabulary vocabulary = Vocabulary.of(TABLES);
    return kind == VisitKind.SITE ? KeyReader.ofSite(vocabulary) : KeyReader.ofDesign(vocabulary);
  }

  static Visit visit(VisitKind kind) {
    KeyReader keys = keys(kind);
    return new Visit(
        VisitRows.read(kind, TABLES, TODAY),
        keys,
        new VisitChoices(
            keys,
            ClosedLists.of(TABLES, UnitSystem.IMPERIAL),
            Map.of("base", List.of(new Choosable("base/rose-gate.yaml", "Rose gate")))),
        TABLES,
        (visit, row, answers) -> Optional.empty());
  }

  /** All answers after these lines, each of which must be taken. */
  static VisitAnswers after(Visit visit, String... lines) {
    VisitAnswers answers = VisitAnswers.none();
    for (String line : lines) {
      VisitRow row = visit.next(answers).orElseThrow();
      VisitTurn turn = visit.answer(row, line, answers);
      if (!(turn instanceof VisitTurn.Taken taken)) {
        throw new AssertionError(row.id() + ": " + line + ": " + turn);
      }
      answers = taken.answers();
    }
    return answers;
  }

  /** Answers up to a question: what is usual, and where nothing is, what is given here. */
  static VisitAnswers upTo(Visit visit, String question, Map<String, String> told) {
    VisitAnswers answers = VisitAnswers.none();
    while (true) {
      Optional<VisitRow> row = visit.next(answers);
      if (row.isEmpty() || row.get().id().equals(question)) {
        return answers;
      }
      String line = told.getOrDefault(row.get().id(), "");
      VisitTurn turn = visit.answer(row.get(), line, answers);
      if (!(turn instanceof VisitTurn.Taken taken)) {
        throw new AssertionError(row.get().id() + ": " + line + ": " + turn);
      }
      answers = taken.answers();
    }
  }
}

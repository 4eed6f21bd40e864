package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.words.AnswerWords;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** Base design and proposal side by side, a line for every thing that one can point at. */
final class Comparison {
  private final Proposal proposal;
  private final Voice voice;
  private final List<SubjectRow> rows;

  Comparison(Told told) {
    this.proposal = told.proposal();
    this.voice = told.voice();
    this.rows = told.words().subjects().rows();
  }

  /** In the order of the report. */
  List<Compared> lines() {
    Map<String, List<SubjectRow>> byLine = new LinkedHashMap<>();
    for (SubjectRow row : rows) {
      if (!row.line().isEmpty() && proposal.decision(row.question()).isPresent()) {
        byLine.computeIfAbsent(row.line(), line -> new ArrayList<>()).add(row);
      }
    }
    return byLine.values().stream().map(this::line).toList();
  }

  private Compared line(List<SubjectRow> line) {
    String then = cells(line, this::then, voice::say);
    String now =
        cells(
            line,
            each -> Optional.of(each.proposed()),
            (question, outcome) -> voice.proposed(proposal.decision(question).orElseThrow()));
    // A difference that no tape shows is none to a reader.
    boolean novel = line.stream().anyMatch(row -> Novelty.is(row, decision(row), voice));
    return new Compared(
        line.get(0).line(),
        then,
        now,
        novel && !then.equals(now),
        line.stream().anyMatch(row -> decision(row).base().isPresent()),
        line.stream().anyMatch(SubjectRow::lead),
        line.stream().allMatch(row -> row.site() || row.load()),
        line.stream().allMatch(SubjectRow::joint),
        line.stream().allMatch(SubjectRow::usual));
  }

  /** What did not change is told alike on both sides, however it was rounded. */
  private Optional<Outcome> then(Decision decision) {
    return decision
        .base()
        .map(base -> decision.changed() ? base : decision.proposed())
        .or(() -> AnswerWords.of(voice).plain(decision.question()).map(Outcome.Word::new));
  }

  private String cells(
      List<SubjectRow> line,
      Function<Decision, Optional<Outcome>> side,
      BiFunction<Question, Outcome, String> said) {
    StringBuilder cells = new StringBuilder();
    for (SubjectRow row : line) {
      side.apply(decision(row))
          .filter(outcome -> !none(outcome))
          .ifPresent(outcome -> join(cells, row.cell().of(said.apply(row.question(), outcome))));
    }
    return cells.toString();
  }

  /** A cell may bring its own comma. */
  private static void join(StringBuilder cells, String cell) {
    if (cells.isEmpty()) {
      cells.append(cell.startsWith(", ") ? cell.substring(2) : cell);
    } else {
      cells.append(cell.startsWith(",") ? "" : " ").append(cell);
    }
  }

  /** A notch or an overhang of nothing is not worth a word. */
  private static boolean none(Outcome outcome) {
    return outcome instanceof Outcome.Amount amount && !(amount.measure().amount() > 0);
  }

  private Decision decision(SubjectRow row) {
    return proposal.decision(row.question()).orElseThrow();
  }
}

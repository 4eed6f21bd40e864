package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** What changed, side by side, and what stayed. */
final class ThenAndNow {
  private final Proposal proposal;
  private final Voice voice;
  private final Map<String, List<SubjectRow>> lines = new LinkedHashMap<>();

  ThenAndNow(Told told) {
    this.proposal = told.proposal();
    this.voice = told.voice();
    for (SubjectRow row : told.words().subjects().rows()) {
      if (!row.line().isEmpty() && proposal.decision(row.question()).isPresent()) {
        lines.computeIfAbsent(row.line(), line -> new ArrayList<>()).add(row);
      }
    }
  }

  void write(Page page) {
    List<List<String>> rows = new ArrayList<>();
    List<String> stayed = new ArrayList<>();
    lines.forEach(
        (line, questions) -> {
          String now = cells(questions, each -> Optional.of(each.proposed()));
          if (questions.stream().anyMatch(this::changed)) {
            String then = cells(questions, Decision::base);
            rows.add(List.of(Sentence.capital(line), then.isEmpty() ? "none" : then, now));
          } else if (questions.stream().anyMatch(this::proven) && !now.isEmpty()) {
            stayed.add(line + " " + now);
          }
        });
    if (!rows.isEmpty()) {
      rows.add(0, List.of("", "base design", "here"));
      page.heading("Then and now").add(new Block.Grid(rows));
    }
    if (!stayed.isEmpty()) {
      page.paragraph("As proven: " + String.join("; ", stayed) + ".");
    }
  }

  private boolean changed(SubjectRow row) {
    return Novelty.is(row, decision(row), voice);
  }

  private boolean proven(SubjectRow row) {
    return decision(row).base().isPresent();
  }

  private String cells(List<SubjectRow> rows, Function<Decision, Optional<Outcome>> side) {
    StringBuilder cells = new StringBuilder();
    for (SubjectRow row : rows) {
      side.apply(decision(row))
          .filter(outcome -> !none(outcome))
          .ifPresent(outcome -> join(cells, row.cell().of(voice.say(row.question(), outcome))));
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

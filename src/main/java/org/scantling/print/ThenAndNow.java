package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.words.SubjectRow;
import org.scantling.words.Subjects;
import org.scantling.words.Voice;

/** What changed, side by side, and what stayed. */
final class ThenAndNow {
  private final Proposal proposal;
  private final Voice voice;
  private final Map<String, List<SubjectRow>> lines = new LinkedHashMap<>();

  ThenAndNow(Proposal proposal, Subjects subjects, Voice voice) {
    this.proposal = proposal;
    this.voice = voice;
    for (SubjectRow row : subjects.rows()) {
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
            rows.add(List.of(line, cells(questions, Decision::base), now));
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
    return decision(row).changed();
  }

  private boolean proven(SubjectRow row) {
    return decision(row).base().isPresent();
  }

  private String cells(
      List<SubjectRow> rows, java.util.function.Function<Decision, Optional<Outcome>> side) {
    List<String> cells = new ArrayList<>();
    for (SubjectRow row : rows) {
      side.apply(decision(row))
          .filter(outcome -> !none(outcome))
          .ifPresent(outcome -> cells.add(row.cell().of(voice.say(row.question(), outcome))));
    }
    return String.join(", ", cells);
  }

  /** A notch or an overhang of nothing is not worth a word. */
  private static boolean none(Outcome outcome) {
    return outcome instanceof Outcome.Amount amount && !(amount.measure().amount() > 0);
  }

  private Decision decision(SubjectRow row) {
    return proposal.decision(row.question()).orElseThrow();
  }
}

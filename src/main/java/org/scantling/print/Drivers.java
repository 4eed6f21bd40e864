package org.scantling.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.words.SubjectRow;
import org.scantling.words.Subjects;
import org.scantling.words.Words;

/**
 * What is different here and bears on a finding: changed demands of the site; where there are none
 * on the way back, the changed layout, else the changed members it leads through.
 */
final class Drivers {
  private final Causes causes;
  private final Subjects subjects;

  Drivers(Proposal proposal, Words words) {
    this.causes = new Causes(proposal, words.reads());
    this.subjects = words.subjects();
  }

  /** In the order of the report. */
  List<Decision> of(Decision decision) {
    return of(decision.governing(), decision.question().id());
  }

  List<Decision> of(Reason reason, String own) {
    Set<String> seen = new HashSet<>(Set.of(own));
    List<Decision> found = new ArrayList<>();
    causes.of(reason, own).forEach(each -> walk(each, seen, found));
    List<SubjectRow> rows =
        subjects.rows().stream()
            .filter(row -> found.stream().anyMatch(each -> each.question() == row.question()))
            .toList();
    List<SubjectRow> given = rows.stream().filter(SubjectRow::given).toList();
    List<SubjectRow> layout = rows.stream().filter(SubjectRow::layout).toList();
    List<SubjectRow> told = given.isEmpty() ? layout.isEmpty() ? rows : layout : given;
    return told.stream().map(row -> decision(row, found)).toList();
  }

  private static Decision decision(SubjectRow row, List<Decision> found) {
    return found.stream()
        .filter(each -> each.question() == row.question())
        .findFirst()
        .orElseThrow();
  }

  private void walk(String reference, Set<String> seen, List<Decision> found) {
    Optional<Decision> decision = causes.decision(reference);
    if (decision.isEmpty() || !seen.add(decision.get().question().id())) {
      return;
    }
    Decision each = decision.get();
    boolean named = subjects.row(each.question()).driver();
    if (each.changed() && named) {
      found.add(each);
    }
    if (!named || !subjects.row(each.question()).safety()) {
      causes.of(each).forEach(next -> walk(next, seen, found));
    }
  }
}

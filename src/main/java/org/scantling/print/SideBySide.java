package org.scantling.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.words.SubjectRow;
import org.scantling.words.Words;

/**
 * Several proposals question by question. What a refused site answered before it was refused does
 * not count, but for what its file gives.
 */
final class SideBySide {
  private final List<ComparedSite> columns;
  private final Words words;

  SideBySide(List<ComparedSite> columns, Words words) {
    this.columns = List.copyOf(columns);
    this.words = words;
  }

  List<ComparedSite> columns() {
    return columns;
  }

  /** A, B, C and so on. */
  static String letter(int column) {
    return Character.toString('A' + column);
  }

  /** The answer of one column, where it counts. */
  Optional<Decision> decision(SubjectRow row, ComparedSite column) {
    return column.proposal().proposed() || row.place()
        ? column.proposal().decision(row.question())
        : Optional.empty();
  }

  /** The questions that any column answers, in the order of a report. */
  List<SubjectRow> rows() {
    return words.subjects().rows().stream()
        .filter(row -> columns.stream().anyMatch(each -> decision(row, each).isPresent()))
        .toList();
  }

  /** True where two proposals answer otherwise, or one answers what another does not ask. */
  boolean differs(SubjectRow row) {
    Set<Optional<Outcome>> answers = new LinkedHashSet<>();
    for (ComparedSite column : columns) {
      Optional<Outcome> answer = decision(row, column).map(Decision::proposed);
      // A site that was refused before the question came up says nothing about it.
      if (column.proposal().proposed() || answer.isPresent()) {
        answers.add(answer);
      }
    }
    return answers.size() > 1;
  }

  /** The columns by their answer, in the order of the columns. */
  Map<Outcome, List<Integer>> byAnswer(SubjectRow row) {
    Map<Outcome, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      decision(row, columns.get(i))
          .ifPresent(
              each ->
                  groups.computeIfAbsent(each.proposed(), key -> new ArrayList<>()).add(column));
    }
    return groups;
  }

  /** How the base has it, where all columns grow from the same base. */
  Optional<Outcome> base(Question question) {
    Set<Optional<Outcome>> bases = new LinkedHashSet<>();
    columns.forEach(
        each -> each.proposal().decision(question).ifPresent(one -> bases.add(one.base())));
    return bases.size() == 1 ? bases.iterator().next() : Optional.empty();
  }

  boolean oneBase() {
    return columns.stream().map(each -> each.proposal().baseTitle()).distinct().count() == 1;
  }

  /** True for what the site file itself says. */
  static boolean asked(Decision decision) {
    Finding finding = decision.governing().finding();
    return (finding instanceof Finding.PreferNumber number && number.priority() == Priority.ASKED)
        || (finding instanceof Finding.PreferOption option && option.priority() == Priority.ASKED);
  }
}

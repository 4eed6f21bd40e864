package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

class VisitKeysTest {
  @ParameterizedTest
  @CsvSource({"SITE,site", "BASE,design"})
  void every_key_of_the_file_is_asked_for_or_left_out_for_a_reason(VisitKind kind, String file) {
    Set<String> asked = paths(kind);
    Map<String, String> left =
        WordFile.read("words/visit-unasked.csv").stream()
            .filter(row -> row.cell("file").equals(file))
            .collect(Collectors.toMap(row -> row.cell("path"), row -> row.cell("reason")));

    Set<String> both = new TreeSet<>(asked);
    both.addAll(left.keySet());
    assertThat(both).containsExactlyInAnyOrderElementsOf(Asking.keys(kind).paths());
    assertThat(left.keySet()).noneMatch(asked::contains);
    assertThat(left.values()).noneMatch(String::isBlank);
  }

  @ParameterizedTest
  @EnumSource(VisitKind.class)
  void every_question_says_why_and_tells_more_when_asked(VisitKind kind) {
    for (VisitRow row : Asking.visit(kind).rows()) {
      assertThat(row.question()).as(row.id()).endsWith("?");
      assertThat(row.why()).as(row.id()).endsWith(".").hasSizeLessThanOrEqualTo(100);
      assertThat(row.more()).as(row.id()).isNotBlank();
    }
  }

  @ParameterizedTest
  @EnumSource(VisitKind.class)
  void whatever_a_question_waits_for_can_be_answered(VisitKind kind) {
    Visit visit = Asking.visit(kind);
    for (VisitRow row : visit.rows()) {
      for (List<AskedWhen.Term> way : row.when().ways()) {
        way.forEach(term -> assertThat(answers(visit, term)).as(row.id()).contains(term.word()));
      }
    }
  }

  /** The words that a question can be answered by, and the marks of what is left open. */
  private static Set<String> answers(Visit visit, AskedWhen.Term term) {
    VisitRow row =
        visit.rows().stream().filter(each -> each.id().equals(term.question())).findFirst().get();
    Set<String> words = new TreeSet<>();
    visit.choices(row).forEach(each -> words.add(each.word()));
    row.usual().ifPresent(words::add);
    if (row.asks() == AskedAs.PIECES) {
      words.add(TimberPieces.NO_SIZE);
    }
    return words;
  }

  @Test
  void each_choice_of_a_question_that_has_no_key_says_what_it_means() {
    for (WordRow row : WordFile.read("words/visit-choices.csv")) {
      assertThat(row.cell("words")).as(row.cell("question")).isNotBlank();
    }
  }

  private static Set<String> paths(VisitKind kind) {
    return Asking.visit(kind).rows().stream()
        .filter(VisitRow::hasPath)
        .map(VisitRow::path)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}

package org.scantling.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** Everything that can be wrong with a rule base is noticed: the right one, broken in one place. */
class LintTest {
  private static final String PLACE = "posts/size";

  private final Tables tables = Tables.load();
  private final Words words = Words.load(tables);
  private final List<RuleFile> files = RuleFile.all();
  private final Set<String> running = ids(files);

  private static Set<String> ids(List<RuleFile> files) {
    Set<String> ids = new TreeSet<>();
    files.forEach(file -> RuleText.in(file).forEach(rule -> ids.add(rule.id())));
    return ids;
  }

  private List<LintReport.Complaint> complaints(List<RuleFile> changed) {
    return new Lint(changed, running, tables, words).report().complaints();
  }

  private List<LintReport.Complaint> withRules(UnaryOperator<String> change) {
    return changed(file -> new RuleFile(PLACE, change.apply(file.text()), file.cases()));
  }

  private List<LintReport.Complaint> withCases(UnaryOperator<String> change) {
    return changed(file -> new RuleFile(PLACE, file.text(), file.cases().map(change)));
  }

  private List<LintReport.Complaint> changed(UnaryOperator<RuleFile> change) {
    List<RuleFile> changed = new ArrayList<>(files);
    changed.replaceAll(file -> file.place().equals(PLACE) ? change.apply(file) : file);
    assertThat(changed).isNotEqualTo(files);
    return complaints(changed);
  }

  private static void says(List<LintReport.Complaint> complaints, String where, String what) {
    assertThat(complaints)
        .anySatisfy(
            each -> {
              assertThat(each.where()).isEqualTo(where);
              assertThat(each.what()).contains(what);
            });
  }

  @Test
  void the_rule_base_as_it_is_gives_no_cause_for_complaint() {
    LintReport report = new Lint(files, running, tables, words).report();
    assertThat(report.complaints()).isEmpty();
    assertThat(report.proofs()).allSatisfy(proof -> assertThat(proof.count()).isPositive());
  }

  @Test
  void no_rules_at_all_are_no_proof() {
    LintReport report = new Lint(List.of(), Set.of(), tables, words).report();
    says(report.complaints(), "the rule base", "nothing was looked at");
    says(report.complaints(), "post.size", "no rule finds anything about this question");
  }

  @Test
  void an_id_that_two_rules_have_is_noticed() {
    List<LintReport.Complaint> found =
        withRules(text -> text.replace("@id(posts.size.tall)", "@id(posts.size.long-bay)"));
    says(found, PLACE, "the id posts.size.long-bay is taken in posts/size");
    says(found, "posts.size.tall", "runs, but is in no file of rules");
  }

  @Test
  void a_rule_that_is_written_but_does_not_run_is_noticed() {
    List<LintReport.Complaint> found =
        withRules(text -> text.replace("posts.size.tall", "posts.size.high"));
    says(found, "posts.size.high", "does not run");
    says(found, "posts.size.high", "has no words for the client");
    says(found, "posts.size.high", "no case shows it fire");
    says(found, PLACE, "a case names posts.size.tall, which is not in it");
    says(found, "posts.size.tall", "has a row in findings.csv, but is not a rule");
  }

  @Test
  void a_row_that_no_table_has_is_noticed() {
    says(
        withRules(text -> text.replace("post.height-4x4", "post.height-5x5")),
        "posts.size.tall",
        "reads the row post.height-5x5, which no table has");
  }

  @Test
  void a_kind_of_fact_that_has_no_words_is_noticed() {
    says(
        withRules(text -> text.replace("  StockMatch(", "  Rumour(")),
        "posts.size.matched",
        "reads Rumour, which has no row in facts.csv");
  }

  @Test
  void a_rule_that_finds_nothing_is_noticed() {
    says(
        withRules(text -> text.replace("Finding.keep(", "Hope.keep(")),
        "posts.size.kept",
        "finds nothing");
  }

  @Test
  void a_rule_that_leans_on_nothing_is_noticed() {
    says(
        withRules(
            text ->
                text.replace(
                    "  Proven(question == Question.POST_SIZE,",
                    "  not Proven(question == Question.POST_SIZE,")),
        "posts.size.kept",
        "reads nothing that it could lean on");
  }

  @Test
  void a_question_without_a_rule_is_noticed() {
    List<RuleFile> without = files.stream().filter(file -> !file.place().equals(PLACE)).toList();
    says(complaints(without), "post.size", "no rule finds anything about this question");
  }

  @Test
  void cases_that_are_missing_or_unreadable_are_noticed() {
    says(
        changed(file -> new RuleFile(PLACE, file.text(), Optional.empty())),
        "posts.size.tall",
        "no case shows it fire");
    says(withCases(text -> text.substring(1)), PLACE, "its cases cannot be read");
    says(
        withCases(text -> text.replace("\"rule\": \"posts.size.tall\"", "\"rule\": \"other\"")),
        PLACE,
        "a case names other");
  }

  @Test
  void a_rule_that_fires_in_every_case_is_noticed() {
    String every = "[{\"case\": \"always\", \"finds\": [{\"rule\": \"posts.size.tall\"}]}]";
    says(withCases(text -> every), "posts.size.tall", "no case shows it keep silent");
  }

  @Test
  void bounds_from_both_sides_are_found_by_their_names() {
    List<String> pairs =
        BoundPairs.in(tables.thumbs()).stream()
            .map(pair -> pair.low() + " " + pair.high())
            .toList();
    assertThat(pairs)
        .contains("crossbeam.spacing-least crossbeam.spacing-longest", "bay.least bay.longest");
    assertThat(BoundPairs.in(tables.wind()))
        .extracting(BoundPairs.Pair::low)
        .contains("wind.older-code.least");
    assertThat(new BoundPairs.Pair("a-least", 2, "a-most", 1).crossed()).isTrue();
    assertThat(new BoundPairs.Pair("a-least", 1, "a-most", 1).crossed()).isFalse();
  }
}

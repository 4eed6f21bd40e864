package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Stated;
import org.scantling.rulebase.RuleBase;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import org.scantling.tables.Tables;

class WordFilesTest {
  private static final Tables TABLES = Tables.load();
  private static final Words WORDS = Words.load(TABLES);

  @Test
  void every_rule_has_its_words_and_no_words_lack_their_rule() {
    assertThat(new TreeSet<>(WORDS.rules()))
        .isEqualTo(new TreeSet<>(RuleBase.load().notes().keySet()));
  }

  @Test
  void every_question_has_a_name_in_the_order_of_the_report() {
    assertThat(WORDS.subjects().rows().stream().map(SubjectRow::question))
        .containsExactlyInAnyOrder(Question.values());
    assertThat(WORDS.subjects().rows().stream().map(SubjectRow::section).distinct())
        .containsSubsequence(
            "site", "way", "layout", "crossbeams", "headers", "posts", "sides", "joints");
  }

  @Test
  void every_path_that_names_a_question_is_one_of_the_site_or_base_file() {
    Set<String> paths = new TreeSet<>(Stream.of(Demand.values()).map(Demand::path).toList());
    assertThat(WORDS.subjects().rows())
        .extracting(SubjectRow::path)
        .allMatch(path -> path.isEmpty() || path.startsWith("base.") || paths.contains(path));
  }

  @Test
  void no_client_template_is_in_the_words_of_the_trade() {
    SoftAssertions all = new SoftAssertions();
    for (WordRow row : WordFile.read("words/findings.csv")) {
      all.assertThat(row.cell("client").replaceAll("\\{[^}]*}", ""))
          .as(row.cell("rule"))
          .doesNotContainPattern(Jargon.PATTERN);
    }
    for (SubjectRow row : WORDS.subjects().rows()) {
      all.assertThat(row.client() + " " + row.phrase().of("") + " " + row.remark())
          .as(row.question().id())
          .doesNotContainPattern(Jargon.PATTERN);
    }
    for (WordRow row : WordFile.read("words/phrases.csv")) {
      all.assertThat(row.cell("client").replaceAll("\\{[^}]*}", ""))
          .as(row.cell("phrase"))
          .doesNotContainPattern(Jargon.PATTERN);
    }
    for (Question question : WORDS.choices().questions()) {
      all.assertThat(WORDS.choices().find(question).orElseThrow().client())
          .as(question.id())
          .doesNotContainPattern(Jargon.PATTERN);
    }
    TABLES
        .checks()
        .rows()
        .forEach(
            row ->
                all.assertThat(row.clientWords())
                    .as(row.id())
                    .doesNotContainPattern(Jargon.PATTERN));
    all.assertAll();
  }

  @Test
  void whatever_a_site_file_may_state_has_its_words() {
    Voice builder = WORDS.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
    for (Demand demand : Demand.values()) {
      assertThat(builder.stated(new Stated(demand, new Outcome.Amount(Measure.count(7)))))
          .as(demand.path())
          .contains("7")
          .doesNotContain("{", demand.path());
    }
    assertThat(builder.stated(new Stated(Demand.USERS, new Outcome.Word("two-abreast"))))
        .isEqualTo("wide enough for two people side by side");
    assertThat(builder.stated(new Stated(Demand.FOOTING, new Outcome.Word("bracket"))))
        .isEqualTo("footing: posts on brackets");
    assertThat(builder.stated(new Stated(Demand.EXPOSURE, new Outcome.Word("C"))))
        .isEqualTo("exposure open country (C)");
  }

  @Test
  void square_brackets_and_blanks_of_every_template_are_well_formed() {
    SoftAssertions all = new SoftAssertions();
    for (WordRow row : WordFile.read("words/findings.csv")) {
      for (String column : List.of("client", "builder", "engineer")) {
        String text =
            row.cell(column)
                .replaceAll("\\{[A-Za-z-]+(\\|[a-z ]+){0,2}}", "")
                .replaceAll("\\[[^\\[\\]]*]", "");
        all.assertThat(text).as(row.cell("rule") + " " + column).doesNotContain("{", "}", "[", "]");
      }
    }
    all.assertAll();
  }

  @Test
  void whatever_a_check_is_made_of_is_a_question_or_a_path() {
    Set<String> known = new TreeSet<>();
    Arrays.stream(Question.values()).map(Question::id).forEach(known::add);
    Arrays.stream(Demand.values()).map(Demand::path).forEach(known::add);
    SoftAssertions all = new SoftAssertions();
    WORDS
        .reads()
        .rows()
        .forEach(
            (reference, reads) ->
                reads.forEach(
                    read ->
                        all.assertThat(known)
                            .as(reference)
                            .contains(read.substring(read.indexOf(':') + 1))));
    all.assertAll();
  }

  @Test
  void every_check_can_be_traced_on() {
    Set<String> untraced = new TreeSet<>();
    TABLES.checks().rows().stream()
        .filter(row -> WORDS.reads().of(row.id(), "").isEmpty())
        .forEach(row -> untraced.add(row.id()));
    assertThat(untraced).isEmpty();
  }

  @Test
  void a_load_that_does_not_act_is_not_read() {
    assertThat(WORDS.reads().of("post.drift", "D+0.6W")).contains("criteria.wind-pressure");
    assertThat(WORDS.reads().of("crossbeam.bending", "D+Lr"))
        .contains("criteria.live-load", "layout.row-spacing")
        .doesNotContain("criteria.flat-snow", "criteria.wind-pressure");
    assertThat(WORDS.reads().of("header.depth-to-post", "")).isEmpty();
  }

  @Test
  void a_rule_without_words_is_named() {
    assertThatThrownBy(() -> Wording.read().template("posts.size.guess", Reader.CLIENT))
        .hasMessage("rules/words/findings.csv has no row for rule 'posts.size.guess'");
    assertThatThrownBy(() -> WordFile.read("nowhere.csv"))
        .hasMessage("rules/nowhere.csv is not on the class path");
  }

  @Test
  void a_column_that_a_file_of_words_has_not_is_named() {
    WordRow row = WordFile.read("words/roles.csv").get(0);
    assertThatThrownBy(() -> row.cell("meaning"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("rules/words/roles.csv has no column 'meaning'");
  }
}

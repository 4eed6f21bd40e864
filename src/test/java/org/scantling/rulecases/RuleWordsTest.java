package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/** Every word of the rules that means something elsewhere means it there too. */
class RuleWordsTest {
  private static final Pattern QUESTION = Pattern.compile("Question\\.([A-Z_]+)");

  private final List<DrlFile> files = DrlFile.all();
  private final Tables tables = Tables.load();

  @Test
  void the_ids_in_the_files_are_those_of_the_rule_base_each_once() {
    List<String> written = files.stream().flatMap(file -> file.ids().stream()).toList();

    assertThat(written)
        .hasSizeGreaterThan(100)
        .containsExactlyInAnyOrderElementsOf(RuleBase.load().notes().keySet());
  }

  @Test
  void every_row_that_a_rule_names_is_in_the_tables() {
    Set<String> numbers = ids(tables.thumbs(), tables.snow(), tables.live(), tables.authority());

    assertThat(strangers("NumberRow", numbers)).isEmpty();
    assertThat(strangers("CheckRow", ids(tables.checks()))).isEmpty();
    assertThat(strangers("DefaultWord", ids(tables.defaults()))).isEmpty();
  }

  @Test
  void rows_are_looked_for_where_rules_name_them() {
    assertThat(named(rule -> rule.idsOf("NumberRow"))).hasSizeGreaterThan(30);
    assertThat(named(rule -> rule.idsOf("DefaultWord"))).hasSizeGreaterThan(4);
  }

  @Test
  void every_question_has_a_rule_in_its_own_phase() {
    Set<String> asked = new TreeSet<>();
    for (DrlFile file : files) {
      named(RuleWordsTest::questions, file).stream()
          .map(Question::valueOf)
          .filter(question -> question.phase() == file.phase())
          .forEach(question -> asked.add(question.id()));
    }
    // One rule speaks for all joints: the row of each fastening names its question.
    tables.joints().rows().forEach(row -> asked.add(row.question().id()));
    // So it is with what a single role is made of: the fact names the question.
    for (TimberRole role : TimberRole.values()) {
      asked.add(role.species().id());
      asked.add(role.grade().id());
    }

    assertThat(asked)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Question.values()).map(Question::id).toList());
  }

  private List<String> strangers(String factType, Set<String> known) {
    return named(rule -> rule.idsOf(factType)).stream().filter(id -> !known.contains(id)).toList();
  }

  private List<String> named(Function<RuleText, List<String>> words) {
    return files.stream().flatMap(file -> named(words, file).stream()).toList();
  }

  private static List<String> named(Function<RuleText, List<String>> words, DrlFile file) {
    List<String> all = new ArrayList<>();
    file.rules().forEach(rule -> all.addAll(words.apply(rule)));
    return all;
  }

  private static List<String> questions(RuleText rule) {
    return QUESTION.matcher(rule.then()).results().map(each -> each.group(1)).toList();
  }

  private static Set<String> ids(Table<?>... tables) {
    Set<String> ids = new TreeSet<>();
    for (Table<?> table : tables) {
      table.rows().stream().map(TableRow::id).forEach(ids::add);
    }
    return ids;
  }
}

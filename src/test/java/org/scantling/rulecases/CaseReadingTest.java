package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.tables.Tables;

/** What the reader of cases refuses, and how it says so. */
class CaseReadingTest {
  private static final String WIDTH = "{\"given\": \"walkway.clear-width\", \"number\": 72}";

  private final TableCells cells = new TableCells(Tables.load());
  private final DrlFile rules =
      DrlFile.all().stream()
          .filter(each -> each.place().equals("clearance/clear-width"))
          .findFirst()
          .orElseThrow();

  @Test
  void a_key_that_nobody_reads_is_refused_with_those_that_are() {
    refuses(
        one("{\"given\": \"walkway.clear-width\", \"nubmer\": 72, \"number\": 72}", ""),
        "nothing reads [nubmer] here; accepted are [given, number]");
    refuses("[{\"case\": \"a\", \"facts\": [], \"finds\": [], \"tag\": 1}]", "nothing reads [tag]");
    refuses(
        one(
            "",
            "{\"asked\": \"layout.clear-width\", \"rule\": \"clearance.width.asked\","
                + " \"number\": 1, \"ratio\": 1}"),
        "nothing reads [ratio] here; accepted are [asked, number, rule]");
  }

  @Test
  void a_fact_begins_with_its_kind() {
    refuses(one("{\"number\": 72, \"given\": \"walkway.clear-width\"}", ""), "must begin with one");
    refuses(one("72", ""), "found 72, must be an object in { }");
  }

  @Test
  void a_missing_or_wrong_value_is_refused() {
    refuses(one("{\"given\": \"walkway.clear-width\"}", ""), "must have number");
    refuses(one("{\"given\": \"walkway.breadth\", \"number\": 1}", ""), "no demand is called");
    refuses(one("{\"answer\": \"post.girth\", \"number\": 1}", ""), "no question is called");
    refuses(one("{\"given\": 7, \"number\": 1}", ""), "given: found 7, must be a word");
    refuses(
        one("{\"parts\": \"layout.bays\", \"count\": 2.5, \"pitch\": 1}", ""), "a whole number");
    refuses(one("{\"row\": \"users:wheelchair\", \"value\": 1}", ""), "holds no single number");
  }

  @Test
  void a_row_or_cell_that_no_table_has_is_refused_with_what_there_is() {
    refuses(
        one("\"thumbs:bay.least\"", ""), "tables are [authority, base-changes, cautions, checks,");
    refuses(one("\"thumb:bay.leest\"", ""), "thumb.csv has no row 'bay.leest'");
    refuses(
        one("{\"given\": \"walkway.clear-width\", \"number\": \"users:wheelchair:girth\"}", ""),
        "row wheelchair has no number 'girth', it has [clearWidthIn, headroomIn]");
    refuses(
        one("{\"given\": \"walkway.clear-width\", \"number\": \"wide\"}", ""),
        "'wide' must be a number or a cell");
  }

  @Test
  void a_finding_of_a_rule_of_another_file_is_refused() {
    refuses(
        one(
            "",
            "{\"asked\": \"layout.headroom\", \"rule\": \"clearance.headroom.asked\","
                + " \"number\": 1}"),
        "rule clearance.headroom.asked must be one of this file");
  }

  @Test
  void a_file_is_a_list_of_cases_with_different_sentences() {
    refuses("{}", "must be a list of cases");
    refuses("[]", "must be a list of cases");
    refuses("[", "clear-width.cases.json: ");
    refuses("[{\"case\": \"a\", \"facts\": []}]", "must have a list as finds");
    String one = "{\"case\": \"a\", \"facts\": [], \"finds\": []}";
    refuses("[" + one + "," + one + "]", "two cases are called 'a'");
  }

  @Test
  void numbers_are_told_by_the_cell_they_come_from() {
    NumberWords words = new NumberWords(cells);
    double least = Tables.load().thumb("bay.least").amount();

    assertThat(words.read("thumb:bay.least + 2 * 3 - 1 / 2")).isEqualTo(least + 5.5);
    assertThat(words.read("users:wheelchair:clearWidthIn"))
        .isEqualTo(Tables.load().user("wheelchair").clearWidthIn());
    assertThat(words.read("-2")).isEqualTo(-2);
  }

  @Test
  void a_row_may_stand_in_for_itself_with_another_number() {
    String facts = "{\"row\": \"thumb:bay.least\", \"value\": \"thumb:bay.least + 6\"}, " + WIDTH;

    List<RuleCase> cases = CaseFile.read(rules, one(facts, ""), cells);

    assertThat(cases.get(0).facts(cells, number -> number).get(0).toString())
        .contains("bay.least")
        .contains("amount=" + (Tables.load().thumb("bay.least").amount() + 6));
  }

  private static String one(String facts, String finds) {
    return "[{\"case\": \"a\", \"facts\": [" + facts + "], \"finds\": [" + finds + "]}]";
  }

  private void refuses(String text, String because) {
    assertThatThrownBy(() -> CaseFile.read(rules, text, cells))
        .isInstanceOf(CaseFault.class)
        .hasMessageContaining(because);
  }
}

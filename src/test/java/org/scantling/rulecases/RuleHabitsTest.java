package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Every rule keeps the house's habits, and a rule that does not is told so. */
class RuleHabitsTest {
  private static final String GOOD =
      """
      // How heavy is the gate?
      // Reads: a row.
      // Finds: gate.weight.
      // Behind it: common practice.
      package org.scantling.rules.loads

      rule "gate weight/no heavier than its hinges carry"
        @id(loads.gate.weight) @kind(common-practice) @source("common practice (2 books)")
      when
        $row : NumberRow(id == "gate.4x4", $most : amount()) // 5 of 7
        not Given(number > 1)
      then
        insert(Finding.atMost(Question.GATE, 0 + $most, Evidence.by($row)));
      end
      """;

  @Test
  void the_rules_keep_the_habits_of_the_house() {
    assertThat(DrlFile.all()).hasSizeGreaterThan(20);
    assertThat(DrlFile.all().stream().flatMap(file -> RuleHabits.complaints(file).stream()))
        .isEmpty();
  }

  @Test
  void a_rule_that_keeps_them_is_left_alone() {
    assertThat(RuleHabits.complaints(sample(GOOD))).isEmpty();
    assertThat(sample(GOOD).rules()).hasSize(1);
  }

  @Test
  void a_number_of_the_trade_is_told() {
    tells("number > 1", "number > 2", "holds the number 2, which belongs in a table");
    tells("0 + $most", "$most * .5", "holds the number .5");
    tells("0 + $most", "1.5", "holds the number 1.5");
    tells("0 + $most", "1e3", "holds the number 1e3");
  }

  @Test
  void a_rule_without_its_words_is_told() {
    tells("gate weight/no", "gate weight no", "must be called by its question and its outcome");
    tells("@kind(common-practice)", "", "says [id, source]");
    tells("@kind(common-practice)", "@kind(a) @kind(b)", "must have one value as @kind");
    tells("common practice (2 books)", "", "must have one value as @source");
    tells("carry\"", "carry" + " on windy days".repeat(5) + "\"", "longer than 100 columns");
  }

  @Test
  void a_rule_that_does_more_than_find_is_told() {
    tells("  insert(", "  $row.close(); insert(", "must insert one finding");
    tells("  insert(Finding", "  insert(new Answer", "must insert one finding");
    tells("when\n", "salience 10\nwhen\n", "salience makes the order of rules matter");
    tells("  insert(", "  update(", "update makes the order of rules matter");
  }

  @Test
  void a_file_without_its_head_is_told() {
    tells("// Reads: a row.", "// It reads a row.", "line 2 must look like // Reads: ");
    tells("rules.loads", "rules.posts", "the package must follow the four lines");
  }

  private static void tells(String good, String bad, String complaint) {
    assertThat(GOOD).contains(good);
    assertThat(RuleHabits.complaints(sample(GOOD.replace(good, bad))))
        .anySatisfy(each -> assertThat(each).contains(complaint));
  }

  private static DrlFile sample(String text) {
    return DrlFile.parse(Path.of("rules", "loads", "gate.drl"), text);
  }
}

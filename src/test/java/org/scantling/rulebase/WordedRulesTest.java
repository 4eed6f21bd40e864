package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A rule base that is not the one that has words does not start. */
class WordedRulesTest {
  private static final SortedSet<String> WORDED = set("posts.size.check", "posts.size.kept");

  @Test
  void the_rules_with_words_and_no_others_start() {
    WordedRules.compare(WORDED, set("posts.size.check", "posts.size.kept"));
  }

  @Test
  void a_missing_rule_stops_the_start_and_is_named() {
    refuses(
        set("posts.size.kept"),
        "told there but not compiled: [posts.size.check]; compiled but not told there: []");
  }

  @Test
  void a_rule_without_words_stops_the_start_and_is_named() {
    refuses(
        set("posts.size.check", "posts.size.kept", "posts.size.tall"),
        "told there but not compiled: []; compiled but not told there: [posts.size.tall]");
  }

  @Test
  void a_renamed_rule_shows_in_both_lists() {
    refuses(
        set("posts.size.check", "posts.size.proven"),
        "not compiled: [posts.size.kept]; compiled but not told there: [posts.size.proven]");
  }

  @Test
  void an_empty_rule_base_stops_the_start_and_every_rule_is_named() {
    refuses(set(), "told there but not compiled: [posts.size.check, posts.size.kept]; ");
  }

  @Test
  void the_rules_with_words_are_those_that_run() {
    assertThat(WordedRules.read())
        .isEqualTo(RuleBase.load().notes().keySet())
        .hasSizeGreaterThan(100)
        .doesNotContain("rule", "");
  }

  private static void refuses(SortedSet<String> compiled, String lists) {
    assertThatThrownBy(() -> WordedRules.compare(WORDED, compiled))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessageContaining("rules/words/findings.csv differ")
        .hasMessageContaining(lists);
  }

  private static SortedSet<String> set(String... ids) {
    return new TreeSet<>(List.of(ids));
  }
}

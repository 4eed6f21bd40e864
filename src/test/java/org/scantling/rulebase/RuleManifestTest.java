package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A rule base that is not the one that was listed does not start. */
class RuleManifestTest {
  private static final SortedSet<String> LISTED = set("posts.size.check", "posts.size.kept");

  @Test
  void the_listed_rules_and_no_others_start() {
    RuleManifest.compare(LISTED, set("posts.size.check", "posts.size.kept"));
  }

  @Test
  void a_missing_rule_stops_the_start_and_is_named() {
    refuses(
        set("posts.size.kept"),
        "listed but not compiled: [posts.size.check]; compiled but not listed: []");
  }

  @Test
  void an_unlisted_rule_stops_the_start_and_is_named() {
    refuses(
        set("posts.size.check", "posts.size.kept", "posts.size.tall"),
        "listed but not compiled: []; compiled but not listed: [posts.size.tall]");
  }

  @Test
  void a_renamed_rule_shows_in_both_lists() {
    refuses(
        set("posts.size.check", "posts.size.proven"),
        "not compiled: [posts.size.kept]; compiled but not listed: [posts.size.proven]");
  }

  @Test
  void an_empty_rule_base_stops_the_start_and_every_rule_is_named() {
    refuses(set(), "listed but not compiled: [posts.size.check, posts.size.kept]; ");
  }

  @Test
  void the_list_is_that_of_the_repository_without_its_heading() {
    assertThat(RuleManifest.read())
        .isEqualTo(RuleBase.load().notes().keySet())
        .hasSizeGreaterThan(100)
        .doesNotContain("id", "");
  }

  private static void refuses(SortedSet<String> compiled, String lists) {
    assertThatThrownBy(() -> RuleManifest.compare(LISTED, compiled))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessageContaining("rules/MANIFEST.csv differ")
        .hasMessageContaining(lists);
  }

  private static SortedSet<String> set(String... ids) {
    return new TreeSet<>(List.of(ids));
  }
}

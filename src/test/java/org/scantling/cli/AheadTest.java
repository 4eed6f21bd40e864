package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.scantling.rulebase.RuleBaseFault;

class AheadTest {
  @Test
  void what_was_begun_is_handed_over_each_time_it_is_asked_for() {
    Ahead<String> ahead = Ahead.of(() -> "ready");

    assertThat(ahead.get()).isEqualTo("ready").isSameAs(ahead.get());
  }

  @Test
  void a_fault_shows_where_the_result_is_asked_for() {
    Ahead<String> ahead =
        Ahead.of(
            () -> {
              throw new RuleBaseFault("no compiled rules");
            });

    assertThatThrownBy(ahead::get)
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("no compiled rules");
  }
}

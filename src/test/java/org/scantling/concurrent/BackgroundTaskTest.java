package org.scantling.concurrent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BackgroundTaskTest {
  @Test
  void what_was_begun_is_handed_over_each_time_it_is_asked_for() {
    BackgroundTask<String> ahead = BackgroundTask.of(() -> "ready");

    assertThat(ahead.get()).isEqualTo("ready").isSameAs(ahead.get());
  }

  @Test
  void a_fault_shows_where_the_result_is_asked_for() {
    BackgroundTask<String> ahead =
        BackgroundTask.of(
            () -> {
              throw new IllegalStateException("no compiled rules");
            });

    assertThatThrownBy(ahead::get)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("no compiled rules");
  }
}

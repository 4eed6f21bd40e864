package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LazyListTest {
  private final AtomicInteger worked = new AtomicInteger();
  private final List<String> list =
      new LazyList<>(
          () -> {
            worked.incrementAndGet();
            return List.of("a", "b");
          });

  @Test
  void it_is_not_worked_out_before_it_is_read() {
    assertThat(worked).hasValue(0);
  }

  @Test
  void it_is_worked_out_once_and_equals_what_it_holds() {
    assertThat(list).containsExactly("a", "b").isEqualTo(List.of("a", "b"));
    assertThat(worked).hasValue(1);
  }

  @Test
  void nobody_can_change_it() {
    assertThatThrownBy(() -> list.add("c")).isInstanceOf(UnsupportedOperationException.class);
  }
}

package org.scantling.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private long nanos;

  @Test
  void it_says_how_much_of_the_file_is_done_where_that_is_known() {
    StringWriter shown = new StringWriter();
    Progress known = progress(shown, OptionalLong.of(3_000));
    Progress unknown = progress(shown, OptionalLong.empty());

    assertThat(known.line(12_345, 0)).isEqualTo("[############------------]  50 %  12,345 lines");
    assertThat(known.line(12_345, 2))
        .isEqualTo("[############------------]  50 %  12,345 lines, 2 wrong");
    assertThat(unknown.line(7, 0)).isEqualTo("7 lines");
    assertThat(shown.toString()).isEmpty();
  }

  @Test
  void what_was_over_before_it_was_shown_leaves_nothing() {
    StringWriter shown = new StringWriter();
    Progress progress = progress(shown, OptionalLong.of(2));

    progress.show(1, 0);
    progress.end();

    assertThat(shown.toString()).isEmpty();
  }

  @Test
  void it_is_written_over_four_times_a_second_and_gone_at_the_end() {
    StringWriter shown = new StringWriter();
    Progress progress = progress(shown, OptionalLong.empty());

    for (int tenth = 1; tenth <= 5; tenth++) {
      nanos += 100_000_000;
      progress.show(tenth, 0);
    }
    progress.end();

    assertThat(shown.toString().split("\r", -1))
        .extracting(String::strip)
        .containsExactly("", "3 lines", "", "");
  }

  private Progress progress(StringWriter shown, OptionalLong all) {
    return new Progress(new PrintWriter(shown), () -> nanos, () -> 1_500, all);
  }
}

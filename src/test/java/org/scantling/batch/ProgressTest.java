package org.scantling.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class ProgressTest {
  @Test
  void it_says_how_much_of_the_file_is_done_where_that_is_known() {
    StringWriter shown = new StringWriter();
    Progress known = new Progress(new PrintWriter(shown), () -> 1_500, OptionalLong.of(3_000));
    Progress unknown = new Progress(new PrintWriter(shown), () -> 1_500, OptionalLong.empty());

    assertThat(known.line(12_345, 0)).isEqualTo("[############------------]  50 %  12,345 lines");
    assertThat(known.line(12_345, 2))
        .isEqualTo("[############------------]  50 %  12,345 lines, 2 wrong");
    assertThat(unknown.line(7, 0)).isEqualTo("7 lines");
    assertThat(shown.toString()).isEmpty();
  }

  @Test
  void what_was_over_before_it_was_shown_leaves_nothing() {
    StringWriter shown = new StringWriter();
    Progress progress = new Progress(new PrintWriter(shown), () -> 1, OptionalLong.of(2));

    progress.show(1, 0);
    progress.end();

    assertThat(shown.toString()).isEmpty();
  }
}

package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

@SuppressWarnings("StaticAssignmentOfThrowable") // only its text is looked at
class TraceTest {
  private static final IllegalStateException FAULT =
      new IllegalStateException("no such board", new IllegalArgumentException("0 in"));

  @Test
  void a_trace_is_set_in_with_spaces_so_that_a_terminal_shows_it_as_it_is() {
    StringWriter shown = new StringWriter();
    TerminalWriter.over(shown).print(Trace.of(FAULT));
    assertThat(shown.toString())
        .startsWith("java.lang.IllegalStateException: no such board")
        .contains("\n    at org.scantling.cli.TraceTest.")
        .contains("\nCaused by: java.lang.IllegalArgumentException: 0 in")
        .doesNotContain("\\u0009", "\t");
  }

  @Test
  void a_wrong_file_with_v_prints_a_trace_without_escapes() {
    StringWriter err = new StringWriter();
    Main.commandLine(
            TerminalWriter.over(new StringWriter()), TerminalWriter.over(new PrintWriter(err)))
        .execute("propose", "-v", "no-such-site.yaml");
    assertThat(err.toString()).contains("\n    at org.scantling.").doesNotContain("\\u0009");
  }
}

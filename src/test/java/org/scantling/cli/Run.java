package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program in process.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
public record Run(int status, String out, String err) {
  public static Run of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true)).execute(args);
    return new Run(status, unix(out), unix(err));
  }

  /** The same run, which must have ended so; if not, both streams are shown. */
  public Run endedWith(int expected) {
    assertThat(status).as("%s%n%s", out, err).isEqualTo(expected);
    return this;
  }

  private static String unix(StringWriter text) {
    return text.toString().replace("\r\n", "\n");
  }
}

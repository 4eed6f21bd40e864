package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/**
 * One run of the program in process.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
public record Run(int status, String out, String err) {
  private static final Clock MAY =
      Clock.fixed(Instant.parse("2026-05-03T12:00:00Z"), ZoneOffset.UTC);

  public static Run of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true)).execute(args);
    return new Run(status, unix(out), unix(err));
  }

  /** A run of a command that asks, with the lines of an answers file. */
  public static Run answering(String lines, String... args) {
    return answering(lines, false, args);
  }

  /** The same with somebody at a terminal. */
  public static Run typing(String lines, String... args) {
    return answering(lines, true, args);
  }

  private static Run answering(String lines, boolean terminal, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    AnswerInput in = new AnswerInput(() -> new StringReader(lines), () -> terminal, MAY);
    int status =
        Main.commandLine(in, new PrintWriter(out, true), new PrintWriter(err, true)).execute(args);
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

package org.scantling.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.tables.Shown;

/**
 * Lets through what shows, ends of lines and our own bold letters; every other sign that would
 * drive a terminal is written out. Whatever stands in somebody's file, it cannot do more than be
 * read.
 */
final class TerminalWriter extends FilterWriter {
  /** Ends of lines, and the two codes that this program prints itself. */
  private static final Pattern OURS = Pattern.compile("[\\n\\r]|\u001b\\[[01]m");

  private TerminalWriter(Writer out) {
    super(out);
  }

  static PrintWriter over(Writer out) {
    return new PrintWriter(new TerminalWriter(out), true);
  }

  @Override
  public void write(int sign) throws IOException {
    write(String.valueOf((char) sign), 0, 1);
  }

  @Override
  public void write(char[] signs, int from, int length) throws IOException {
    write(new String(signs, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    String part = text.substring(from, from + length);
    Matcher ours = OURS.matcher(part);
    int done = 0;
    while (ours.find()) {
      out.write(Shown.of(part.substring(done, ours.start())));
      out.write(ours.group());
      done = ours.end();
    }
    out.write(Shown.of(part.substring(done)));
  }
}

package org.scantling.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.regex.Pattern;

/** The trace of a fault, set in with spaces: a terminal is given no tabs. */
final class Trace {
  private static final Pattern TABS = Pattern.compile("(?m)^\t+");
  private static final String INDENT = "    ";

  private Trace() {}

  static String of(Throwable fault) {
    StringWriter text = new StringWriter();
    fault.printStackTrace(new PrintWriter(text, true));
    return TABS.matcher(text.toString()).replaceAll(INDENT);
  }
}

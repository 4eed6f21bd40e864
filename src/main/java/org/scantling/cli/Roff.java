package org.scantling.cli;

import java.util.Locale;

/** Text as the manual reader of a Unix system takes it: requests at the start of their lines. */
final class Roff {
  private final StringBuilder text = new StringBuilder();

  /**
   * The first line, by which the page is known.
   *
   * @param version of the program, at the foot of each sheet
   */
  Roff page(String name, String version) {
    return line(".TH \"" + plain(name.toUpperCase(Locale.ROOT)) + "\" 1 \"\" \"" + version + "\"")
        .line(".nh")
        .line(".ad l");
  }

  Roff heading(String words) {
    return line(".SH " + plain(words));
  }

  Roff paragraph(String words) {
    return line(".PP").lines(words);
  }

  /** What is told of, in bold, and indented below it what is told. */
  Roff item(String bold, String words) {
    return line(".TP").line("\\fB" + typed(bold) + "\\fR").lines(words);
  }

  /** Words that are typed as they stand, with a hanging indent. */
  Roff command(String bold, String rest) {
    return line(".HP").line("\\fB" + typed(bold) + "\\fR " + typed(rest));
  }

  /** Paragraphs between empty lines; what is indented stays as it stands, line by line. */
  Roff shown(String words) {
    line(".PP");
    boolean indented = false;
    for (String each : words.split("\n")) {
      if (!each.isBlank() && each.startsWith("  ") != indented) {
        indented = !indented;
        line(indented ? ".nf" : ".fi");
      }
      line(each.isBlank() ? ".PP" : indented ? typedAsItStands(each) : plain(each));
    }
    return indented ? line(".fi") : this;
  }

  private static String typedAsItStands(String words) {
    return escaped(words).replace("-", "\\-");
  }

  /** Lines of a text that stay lines. */
  private Roff lines(String words) {
    String[] all = words.strip().split("\n");
    for (int i = 0; i < all.length; i++) {
      if (i > 0) {
        line(".br");
      }
      line(plain(all[i].strip()));
    }
    return this;
  }

  private Roff line(String line) {
    text.append(line).append('\n');
    return this;
  }

  /** Hyphens that are searched for and copied as they are typed. */
  private static String typed(String words) {
    return escaped(words.replaceAll("\\s+", " ")).replace("-", "\\-");
  }

  /** A line that begins with a dot or a quote would be taken for a request. */
  private static String plain(String words) {
    String safe = escaped(words).replaceAll("(?<=^|\\s)--(?=[a-z])", "\\\\-\\\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }

  private static String escaped(String words) {
    return words.replace("\\", "\\e");
  }

  @Override
  public String toString() {
    return text.toString();
  }
}

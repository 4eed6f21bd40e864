package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text at spaces. */
final class Wrap {
  /** Between a whole number and its fraction, or a number and its unit, no line breaks. */
  private static final Pattern GLUE =
      Pattern.compile(
          "(?<=\\d) (?=(?:\\d+/\\d+|psf|psi|lb|mph|ft|%|mm|cm|m|kPa|MPa|kN|in\\b(?! \\w))(?!\\w))"
              + "|(?<=\\bft \\d{1,2}|\\d/\\d{1,2}) (?=in\\b)|(?<=\\bft) (?=\\d)");

  private Wrap() {}

  /**
   * Lines no longer than the width, except where one word is.
   *
   * @param first what the first line starts with
   * @param next what every other line starts with
   */
  static List<String> lines(String text, String first, String next, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean started = false;
    for (String glued : GLUE.matcher(text.strip()).replaceAll("\u00a0").split("[ \n]+")) {
      String word = glued.replace('\u00a0', ' ');
      if (started && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line = new StringBuilder(next);
        started = false;
      }
      line.append(started ? " " : "").append(word);
      started = true;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }
}

package org.scantling.print;

import java.util.ArrayList;
import java.util.List;

/** Breaks text at spaces. */
final class Wrap {
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
    for (String word : text.strip().split("\\s+")) {
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

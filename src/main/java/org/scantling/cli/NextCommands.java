package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.scantling.sayings.Sayings;

/** What may be typed next, and what each does. */
final class NextCommands {
  private static final String BETWEEN = " \\| ";

  /** What is left of 80 columns for a command and what it does. */
  private static final int ROOM = 76;

  private NextCommands() {}

  /**
   * @param names of sayings that have the command and, behind a bar, what it does
   */
  static void print(Sayings sayings, Path file, List<String> names, PrintWriter out) {
    List<String[]> lines =
        names.stream()
            .map(name -> sayings.say(name, "file", file.toString()).split(BETWEEN))
            .toList();
    int widest = lines.stream().mapToInt(line -> line[0].length()).max().orElse(0);
    boolean beside = lines.stream().allMatch(line -> widest + line[1].length() <= ROOM);
    out.println(sayings.say("next"));
    for (String[] line : lines) {
      if (beside) {
        out.println("  " + line[0] + " ".repeat(widest - line[0].length() + 2) + line[1]);
      } else {
        out.println("  " + line[0]);
        out.println("      " + line[1]);
      }
    }
  }
}

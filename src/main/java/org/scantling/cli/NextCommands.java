package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.scantling.words.Sayings;

/** What may be typed next, and what each does. */
final class NextCommands {
  private static final String BETWEEN = " | ";

  private NextCommands() {}

  /**
   * @param names of sayings that have the command and, behind a bar, what it does
   */
  static void print(Sayings sayings, Path file, List<String> names, PrintWriter out) {
    List<String> lines =
        names.stream().map(name -> sayings.say(name, "file", file.toString())).toList();
    int width = lines.stream().mapToInt(line -> line.indexOf(BETWEEN)).max().orElse(0);
    out.println(sayings.say("next"));
    for (String line : lines) {
      int bar = line.indexOf(BETWEEN);
      String command = line.substring(0, bar);
      out.println(
          "  "
              + command
              + " ".repeat(width - bar + 2)
              + line.substring(bar + BETWEEN.length()));
    }
  }
}

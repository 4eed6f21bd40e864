package org.scantling.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** The few commands that most people want, with what each does: rules/words/first-commands.csv. */
public final class FirstCommands {
  private static final int SHOWN = 3;

  private FirstCommands() {}

  /** Their lines, the first of those that the program has. */
  public static List<String> lines(Set<String> commands) {
    List<WordRow> rows =
        WordFile.read("words/first-commands.csv").stream()
            .filter(row -> commands.contains(row.cell("command")))
            .limit(SHOWN)
            .toList();
    int widest = rows.stream().mapToInt(row -> row.cell("usage").length()).max().orElse(0);
    List<String> lines = new ArrayList<>();
    for (WordRow row : rows) {
      String usage = row.cell("usage");
      lines.add(usage + " ".repeat(widest - usage.length() + 2) + row.cell("says"));
    }
    return lines;
  }
}

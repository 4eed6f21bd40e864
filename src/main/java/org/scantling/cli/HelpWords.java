package org.scantling.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;
import picocli.CommandLine;

/**
 * What {@code --help} says of commands and options: rules/words/help.csv, by the keys under which
 * picocli looks for it. A further row of the same key is a further paragraph.
 */
final class HelpWords extends ResourceBundle {
  private static final String FILE = "words/help.csv";

  private final Map<String, String> byKey = new LinkedHashMap<>();

  private HelpWords() {
    for (WordRow row : WordFile.read(FILE)) {
      byKey.put(free(row.cell("key")), row.cell("words"));
    }
  }

  /** The key itself, or with the next number behind it where it has words already. */
  private String free(String key) {
    String free = key;
    for (int number = 0; byKey.containsKey(free); number++) {
      free = key + "." + number;
    }
    return free;
  }

  /** Has all commands say them; the file is not read before somebody asks for help. */
  static void sayIn(CommandLine commands) {
    commands.setHelpFactory(
        (command, colors) -> {
          told(command.root().commandLine());
          return new CommandLine.Help(command, colors);
        });
  }

  /** The command with its words, and those below it. */
  static CommandLine told(CommandLine command) {
    return command.getResourceBundle() == null
        ? command.setResourceBundle(new HelpWords())
        : command;
  }

  @Override
  protected @Nullable Object handleGetObject(String key) {
    return byKey.get(key);
  }

  @Override
  public Enumeration<String> getKeys() {
    return Collections.enumeration(byKey.keySet());
  }
}

package org.scantling.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;

/** A line that a command understands: the first example at the foot of its help. */
final class WorkingLine {
  private static final String START = "scantling ";

  private WorkingLine() {}

  static Optional<String> of(CommandLine command) {
    CommandLine told = HelpWords.told(command);
    return Arrays.stream(told.getCommandSpec().usageMessage().footer())
        .flatMap(text -> String.format(Locale.ROOT, text).lines())
        .map(line -> line.replaceFirst("^Examples?:", "").strip())
        .filter(line -> line.startsWith(START))
        .findFirst()
        .map(line -> CommandWords.say("works", "line", line));
  }
}

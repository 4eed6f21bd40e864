package org.scantling.cli;

import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;

/** A line that a command understands: the first example at the foot of its help. */
final class WorkingLine {
  private static final String START = "scantling ";

  private WorkingLine() {}

  static Optional<String> of(CommandLine command) {
    return Arrays.stream(command.getCommandSpec().usageMessage().footer())
        .map(String::strip)
        .filter(line -> line.startsWith(START))
        .findFirst()
        .map(line -> "This works: " + line);
  }
}

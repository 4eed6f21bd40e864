package org.scantling.cli;

import org.scantling.words.FirstCommands;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command that only knows the others. */
@Command(
    name = "scantling",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    header = "Scales a proven garden walk to a new site and gives the reason for every choice.",
    description = {
      "",
      "Reads a site file, which names a base design that has proved itself, and proposes the resized structure: bays,"
          + " heights, timber sizes, footings and joints, each confirmed by calculation.",
    },
    footer = {
      "",
      "Exit status: 0 an answer was given; 2 the command line or a file is wrong and nothing was written; 3 no"
          + " acceptable structure inside the rule base, a case for a licensed engineer; 1 a fault of the program.",
    })
final class Scantling implements Runnable {
  @Spec private CommandSpec spec;

  private final AnswerInput answers;

  Scantling(AnswerInput answers) {
    this.answers = answers;
  }

  /** Where the commands that ask take the answers from. */
  AnswerInput answers() {
    return answers;
  }

  @Override
  public void run() {
    FirstCommands.lines(Commands.names()).forEach(spec.commandLine().getOut()::println);
  }
}

package org.scantling.cli;

import org.scantling.words.FirstCommands;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command that only knows the others. */
@Command(name = "scantling", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class Scantling implements Runnable, Answering {
  @Spec private CommandSpec spec;

  private final AnswerInput answers;

  Scantling(AnswerInput answers) {
    this.answers = answers;
  }

  @Override
  public AnswerInput answers() {
    return answers;
  }

  @Override
  public void run() {
    FirstCommands.lines(Commands.names()).forEach(spec.commandLine().getOut()::println);
  }
}

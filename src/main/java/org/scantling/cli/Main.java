package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    if (Commands.askRules(args)) {
      CompiledRules.begin();
    }
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    CommandLine commands = commandLine(out, err, args);
    int status = commands.execute(args);
    commands.getOut().flush();
    System.exit(status);
  }

  /**
   * The command line, writing where it is told; tests run it in process.
   *
   * @param args what will be executed; none for the whole command line
   */
  static CommandLine commandLine(PrintWriter out, PrintWriter err, String... args) {
    return commandLine(AnswerInput.standard(), out, err, args);
  }

  /** The same, where those who are asked something answer from there. */
  static CommandLine commandLine(
      AnswerInput answers, PrintWriter out, PrintWriter err, String... args) {
    CommandLine commands = new CommandLine(new Scantling(answers));
    Commands.add(commands, args);
    commands.setOut(TerminalWriter.over(out));
    commands.setErr(TerminalWriter.over(err));
    ChoiceConverter.read(commands);
    commands.setExecutionExceptionHandler(new Sentences());
    commands.setParameterExceptionHandler(new Refusals());
    return commands;
  }
}

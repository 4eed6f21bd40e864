package org.scantling.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.scantling.intake.IntakeException;
import org.scantling.print.ErrorText;
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
    Path home = Path.of(System.getProperty("user.home", ""));
    Optional<Path> defaults =
        UserDefaults.place(System.getenv(), System.getProperty("os.name", ""), home);
    int status =
        defaults.isPresent() && !asksForHelp(args)
            ? execute(commands, defaults.get(), home, args)
            : commands.execute(args);
    commands.getOut().flush();
    System.exit(status);
  }

  private static boolean asksForHelp(String... args) {
    return List.of(args).stream()
        .anyMatch(arg -> List.of("--help", "-h", "--version", "-V").contains(arg));
  }

  /** Runs with the defaults of a file, which is refused like any other where it is wrong. */
  static int execute(CommandLine commands, Path file, Path home, String... args) {
    try {
      UserDefaults defaults = UserDefaults.read(file, home);
      commands.setDefaultValueProvider(defaults);
      commands.setExecutionStrategy(
          parsed -> {
            if (SiteOptions.verbose(parsed)) {
              commands.getErr().println(CommandWords.say("defaults", "file", file.toString()));
            }
            return new CommandLine.RunLast().execute(parsed);
          });
    } catch (IntakeException wrong) {
      commands.getErr().println(ErrorText.of(wrong.getMessage()));
      return ExitStatus.WRONG_INPUT;
    }
    return commands.execute(args);
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
    HelpWords.sayIn(commands);
    commands.setExecutionExceptionHandler(new Sentences());
    commands.setParameterExceptionHandler(new Refusals());
    return commands;
  }
}

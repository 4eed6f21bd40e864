package org.scantling.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.scantling.intake.NearMiss;
import org.scantling.print.ErrorText;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong on the command line, in one line, and where to read more. */
final class Refusals implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException exception, String[] args) {
    CommandLine command = exception.getCommandLine();
    PrintWriter err = command.getErr();
    Optional<String> unknown = unknown(exception, args);
    err.println(ErrorText.of("scantling: " + unknown.orElseGet(exception::getMessage)));
    if (unknown.isEmpty() && !UnmatchedArgumentException.printSuggestions(exception, err)) {
      err.println(CommandWords.say("help", "command", command.getCommandSpec().qualifiedName()));
    }
    WorkingLine.of(command).ifPresent(err::println);
    return ExitStatus.WRONG_INPUT;
  }

  /** What is missing may be there with a slip in its name, which is the thing to tell. */
  private static Optional<String> unknown(ParameterException exception, String... args) {
    if (!(exception instanceof MissingParameterException)) {
      return Optional.empty();
    }
    Set<String> known = exception.getCommandLine().getCommandSpec().optionsMap().keySet();
    return Arrays.stream(args)
        .filter(arg -> arg.startsWith("--"))
        .map(arg -> arg.replaceFirst("=.*", ""))
        .filter(arg -> !known.contains(arg))
        .flatMap(arg -> NearMiss.nearest(arg, known).map(near -> slip(arg, near)).stream())
        .findFirst();
  }

  private static String slip(String written, String near) {
    return CommandWords.say("option.unknown", "option", written, "near", near);
  }
}

package org.scantling.cli;

import java.io.PrintWriter;
import org.scantling.print.ErrorText;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong on the command line, in one line, and where to read more. */
final class Refusals implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException exception, String[] args) {
    CommandLine command = exception.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(ErrorText.of("scantling: " + exception.getMessage()));
    if (!UnmatchedArgumentException.printSuggestions(exception, err)) {
      err.println(CommandWords.say("help", "command", command.getCommandSpec().qualifiedName()));
    }
    WorkingLine.of(command).ifPresent(err::println);
    return ExitStatus.WRONG_INPUT;
  }
}

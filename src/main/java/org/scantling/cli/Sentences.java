package org.scantling.cli;

import java.io.PrintWriter;
import org.scantling.intake.IntakeException;
import org.scantling.intake.OutsideException;
import org.scantling.print.ErrorText;
import org.scantling.quantity.QuantityException;
import org.scantling.tables.TableException;
import org.scantling.tables.YardException;
import org.scantling.words.UnknownSubject;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * Turns an exception into a sentence for people and an exit status; the trace shows only with
 * {@code -v}.
 */
final class Sentences implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(
      Exception exception, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (exception instanceof OutsideException outside) {
      OutsideAnswer.print(outside, command, parsed);
      return ExitStatus.NEEDS_ENGINEER;
    }
    boolean theirs =
        exception instanceof IntakeException
            || exception instanceof TableException
            || exception instanceof YardException
            || exception instanceof OutException
            || exception instanceof QuantityException
            || exception instanceof UnknownSubject
            || exception instanceof WrongOption;
    err.println(ErrorText.of(theirs ? exception.getMessage() : fault(exception)));
    if (exception instanceof WrongOption) {
      WorkingLine.of(command).ifPresent(err::println);
    }
    if (SiteOptions.verbose(parsed)) {
      err.print(Trace.of(exception));
      err.flush();
    }
    return theirs ? ExitStatus.WRONG_INPUT : ExitStatus.FAULT;
  }

  private static String fault(Exception exception) {
    return CommandWords.say("fault", "what", String.valueOf(exception.getMessage()))
        + "\n"
        + CommandWords.say("fault.trace");
  }
}

package org.scantling.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.scantling.batch.BatchException;
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
    Optional<String> sentence = theirs(exception);
    err.println(ErrorText.of(sentence.orElseGet(() -> fault(exception))));
    if (exception instanceof WrongOption) {
      WorkingLine.of(command).ifPresent(err::println);
    }
    if (SiteOptions.verbose(parsed)) {
      err.print(Trace.of(exception));
      err.flush();
    }
    return sentence.isPresent() ? ExitStatus.WRONG_INPUT : ExitStatus.FAULT;
  }

  /** What an exception says that is about what somebody has written; empty for a fault of ours. */
  private static Optional<String> theirs(Exception exception) {
    boolean theirs =
        exception instanceof IntakeException
            || exception instanceof TableException
            || exception instanceof YardException
            || exception instanceof OutException
            || exception instanceof BatchException
            || exception instanceof QuantityException
            || exception instanceof UnknownSubject
            || exception instanceof WrongOption;
    return theirs ? Optional.ofNullable(exception.getMessage()) : Optional.empty();
  }

  private static String fault(Exception exception) {
    return CommandWords.say("fault", "what", String.valueOf(exception.getMessage()))
        + "\n"
        + CommandWords.say("fault.trace");
  }
}

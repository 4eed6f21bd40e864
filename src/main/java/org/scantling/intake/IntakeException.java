package org.scantling.intake;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** An input file or a {@code --set} value is wrong; carries every problem that was found. */
public final class IntakeException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  static final int MOST_SHOWN = 100;

  private final transient List<Problem> problems;

  IntakeException(List<Problem> problems) {
    super(text(problems));
    this.problems = List.copyOf(problems);
  }

  /** Every problem on a line of its own. */
  @Override
  public String getMessage() {
    return Objects.requireNonNull(super.getMessage());
  }

  /** All problems, in the order of the files and their lines; never empty. */
  public List<Problem> problems() {
    return problems;
  }

  /** Whether something is missing, so that the rest may be in order. */
  public boolean isIncomplete() {
    return problems.stream().anyMatch(Problem::missing);
  }

  private static String text(List<Problem> problems) {
    String shown =
        problems.stream().limit(MOST_SHOWN).map(Problem::text).collect(Collectors.joining("\n"));
    int more = problems.size() - MOST_SHOWN;
    return more > 0
        ? shown + "\n" + ProblemPhrases.say("problem.more", "more", String.valueOf(more))
        : shown;
  }
}

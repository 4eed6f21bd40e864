package org.scantling.tables;

import java.util.List;
import java.util.stream.Collectors;

/** A yard's list, or one of prices, that cannot be used; carries everything wrong with it. */
public final class YardException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int MOST_SHOWN = 50;

  private final transient List<TableException> problems;

  YardException(List<TableException> problems) {
    super(
        problems.stream()
                .limit(MOST_SHOWN)
                .map(TableException::getMessage)
                .collect(Collectors.joining("\n"))
            + (problems.size() > MOST_SHOWN
                ? "\n"
                    + RefusalWords.say(
                        "problem.more", "more", String.valueOf(problems.size() - MOST_SHOWN))
                : ""));
    this.problems = List.copyOf(problems);
  }

  /** All problems in the order of the lines; never empty. */
  public List<TableException> problems() {
    return problems;
  }
}

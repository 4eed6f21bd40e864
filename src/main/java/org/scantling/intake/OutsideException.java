package org.scantling.intake;

import java.util.List;
import java.util.stream.Collectors;

/** A file asks for something that lies outside the rules: a case for somebody else. */
public final class OutsideException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Outside> found;
  private final transient List<Problem> problems;

  OutsideException(List<Outside> found, List<Problem> problems) {
    super(found.stream().map(Outside::text).collect(Collectors.joining("\n")));
    this.found = List.copyOf(found);
    this.problems = List.copyOf(problems);
  }

  /** Everything of the kind, in the order of the files; never empty. */
  public List<Outside> found() {
    return found;
  }

  /** What else is wrong with the files. */
  public List<Problem> problems() {
    return problems;
  }
}

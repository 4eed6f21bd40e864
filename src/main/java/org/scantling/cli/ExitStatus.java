package org.scantling.cli;

/** What the shell is told. */
final class ExitStatus {
  static final int ANSWERED = 0;
  static final int FAULT = 1;
  static final int WRONG_INPUT = 2;
  static final int NEEDS_ENGINEER = 3;

  private ExitStatus() {}
}

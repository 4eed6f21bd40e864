package org.scantling.cli;

/** Options that cannot be used, one line each: what was found and what is accepted. */
final class WrongOption extends RuntimeException {
  private static final long serialVersionUID = 1L;

  WrongOption(String message) {
    super(message);
  }
}

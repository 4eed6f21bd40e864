package org.scantling.cli;

/** The command line asks for something that cannot be given; the message says what can. */
final class WrongInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  WrongInput(String message) {
    super(message);
  }
}

package org.scantling.cli;

/** A folder that cannot be written to; nothing was written. */
final class OutException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  OutException(String message) {
    super(message);
  }
}

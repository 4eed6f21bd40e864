package org.scantling.words;

/** Somebody asks about a thing that has no name here; the message says what has. */
public final class UnknownSubject extends RuntimeException {
  private static final long serialVersionUID = 1;

  UnknownSubject(String message) {
    super(message);
  }
}

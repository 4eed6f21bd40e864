package org.scantling.rulecases;

/** A file of cases that cannot be read as it is written: where, what was found, what must stand. */
final class CaseFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CaseFault(String message) {
    super(message);
  }
}

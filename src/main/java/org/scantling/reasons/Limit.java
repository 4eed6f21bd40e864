package org.scantling.reasons;

/** A table row that is one number. */
public interface Limit extends Cited {
  double amount();
}

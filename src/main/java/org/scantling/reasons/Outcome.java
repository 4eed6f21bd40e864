package org.scantling.reasons;

import org.scantling.quantity.Measure;

/** A decided value: a number with its unit, or a word. */
public sealed interface Outcome {
  /** A number. */
  record Amount(Measure measure) implements Outcome {}

  /** A size, a kind, a style. */
  record Word(String text) implements Outcome {}
}

package org.scantling.reasons;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * An answer of a fixed design that a finding forbids.
 *
 * @param question what the design has otherwise
 * @param found how it has it
 * @param kind how much that matters
 * @param ratio what is asked over what there is, or the other way round where less is asked; above
 *     1; empty where there is no such number
 * @param reason the finding
 */
public record Shortfall(
    Question question, Outcome found, Kind kind, OptionalDouble ratio, Reason reason) {

  /** How much it matters, gravest first. */
  public enum Kind {
    /** A standard, the arithmetic, or those who pass ask for something else. */
    DOES_NOT_MEET,
    /** The site file asks for something else. */
    NOT_AS_ASKED,
    /** The trade usually builds otherwise. */
    OUT_OF_HABIT,
    /** The checks had to take another value, for the design's own cannot be laid out. */
    TAKEN_OTHERWISE;

    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True where the design does not do for the site. */
    public boolean fails() {
      return this == DOES_NOT_MEET || this == NOT_AS_ASKED;
    }
  }
}

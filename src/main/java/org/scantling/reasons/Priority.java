package org.scantling.reasons;

/**
 * How strongly a preference speaks, weakest first: what stood before, what the trade does, what
 * somebody asked for.
 */
public enum Priority {
  KEPT,
  TRADE,
  ASKED
}

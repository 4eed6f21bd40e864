package org.scantling.words;

/** Whom a text is for. */
public enum Reader {
  /** Wants to know what they get and why, without the trade. */
  CLIENT,
  /** Builds it: the number, the rule, the source. */
  BUILDER,
  /** Verifies it: the check, the clause, the working. */
  ENGINEER
}

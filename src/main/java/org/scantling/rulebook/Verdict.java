package org.scantling.rulebook;

import java.util.Locale;

/** What a rule may find. */
public enum Verdict {
  AT_LEAST,
  AT_MOST,
  KEEPS,
  PREFERS,
  ASKS,
  REJECTS,
  REFUSES,
  EASES,
  TELLS,
  NONE;

  /** By the name of the finding that a rule makes. */
  static Verdict of(String finding) {
    return switch (finding.toLowerCase(Locale.ROOT)) {
      case "atleast" -> AT_LEAST;
      case "atmost" -> AT_MOST;
      case "keep" -> KEEPS;
      case "prefer", "prefernumber", "preferoption" -> PREFERS;
      case "asked" -> ASKS;
      case "reject" -> REJECTS;
      case "refuse" -> REFUSES;
      case "ease" -> EASES;
      case "caution" -> TELLS;
      default -> NONE;
    };
  }
}

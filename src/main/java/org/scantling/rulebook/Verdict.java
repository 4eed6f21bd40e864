package org.scantling.rulebook;

import java.util.Locale;

/** What a rule may find. */
public enum Verdict {
  AT_LEAST("the answer is at least"),
  AT_MOST("the answer is at most"),
  KEEPS("keeps what the base has"),
  PREFERS("prefers an answer"),
  ASKS("takes what is asked for"),
  REJECTS("rejects an option"),
  REFUSES("refuses the site"),
  EASES("eases a limit"),
  TELLS("tells people something"),
  NONE("finds nothing");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

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

package org.scantling.reasons;

/** What stands behind a number or a rule; the word is the one that outputs print. */
public enum SourceKind {
  STANDARD("standard"),
  HANDBOOK("handbook"),
  COMMON_PRACTICE("common-practice"),
  HOUSE_RULE("house-rule"),
  PREFERENCE("preference"),
  CALCULATION("calculation");

  private final String word;

  SourceKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /**
   * @throws IllegalArgumentException for a word that is no kind, naming those that are
   */
  public static SourceKind of(String word) {
    for (SourceKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(
        "source kind '"
            + word
            + "' must be standard, handbook, common-practice, house-rule, preference or calculation");
  }
}

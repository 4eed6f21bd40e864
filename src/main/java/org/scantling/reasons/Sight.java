package org.scantling.reasons;

/** How a value of a document came to us. */
public enum Sight {
  /** Read in the document or a copy of its page, or nothing was printed that could be read. */
  SEEN("seen", ""),
  /** Read in somebody's copy of the document, whose page nobody here has seen. */
  SECOND_HAND("second-hand", ", seen at second hand"),
  /** Recalled. */
  MEMORY("memory", ", from memory");

  private final String key;
  private final String doubt;

  Sight(String key, String doubt) {
    this.key = key;
    this.doubt = doubt;
  }

  /** The word of the tables' status column. */
  public String key() {
    return key;
  }

  /** What a citation says of it, at its end. */
  String doubt() {
    return doubt;
  }

  /** The sight of a word; {@link #SEEN} for any other. */
  public static Sight of(String key) {
    for (Sight sight : values()) {
      if (sight.key.equals(key)) {
        return sight;
      }
    }
    return SEEN;
  }
}

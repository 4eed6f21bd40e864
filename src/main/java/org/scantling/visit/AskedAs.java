package org.scantling.visit;

import java.util.Locale;

/** What kind of answer a question takes. */
public enum AskedAs {
  /** A line of text for people, which no key holds. */
  TEXT,
  /** A day. */
  DATE,
  /** Whatever the key of the file takes. */
  KEY,
  /** One of the words of the key, or of the question's own. */
  WORDS,
  /** Any number of such words. */
  SEVERAL,
  /** A design file. */
  BASE,
  /** Timber as it is bought, such as seven 2x4x8. */
  PIECES,
  /** A length by the tape that no key holds. */
  LENGTH,
  /** A number of things that no key holds. */
  COUNT;

  static AskedAs of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}

package org.scantling.tables;

import java.util.Locale;

/** What is left of a word where people write it in another form. */
public final class WordForm {
  private WordForm() {}

  /** Case, spaces, hyphens, dots and the number sign do not make another word. */
  public static String of(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_.#-]", "");
  }

  /** Whether two are one word in two forms. */
  public static boolean same(String one, String other) {
    return of(one).equals(of(other));
  }
}

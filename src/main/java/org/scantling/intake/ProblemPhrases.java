package org.scantling.intake;

import java.util.Collection;
import org.scantling.sayings.Listed;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Shown;

/** What is said of problems with a file: rules/words/file-problems.csv. */
final class ProblemPhrases {
  private static final int LONGEST = 60;

  private ProblemPhrases() {}

  /** A piece of someone's file, short enough and with signs that drive a terminal written out. */
  static String shortened(String text) {
    String plain = Shown.of(text.replaceAll("[\\n\\r\\t]+", " ")).strip();
    return plain.codePointCount(0, plain.length()) <= LONGEST
        ? plain
        : plain.substring(0, plain.offsetByCodePoints(0, LONGEST)) + "...";
  }

  /** A sentence with its blanks filled, name and filling in turn; read when it is first needed. */
  static String say(String name, String... blanks) {
    return Sayings.of("file-problems").say(name, blanks);
  }

  /** Those that were probably meant, as a question; empty where there are none. */
  static String maybe(Collection<String> meant) {
    return meant.isEmpty() ? "" : say("maybe", "words", Listed.or(meant));
  }

  static String maybe(String meant) {
    return say("maybe", "words", meant);
  }

  static String oneOf(Collection<String> words) {
    String all = Listed.or(words);
    return words.size() == 1 ? all : say("one-of", "words", all);
  }
}

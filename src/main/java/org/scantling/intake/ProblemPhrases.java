package org.scantling.intake;

import java.util.Collection;
import java.util.List;
import org.scantling.tables.Shown;

/** Small pieces of sentences for problems. */
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

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  static String either(Collection<String> words) {
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    return last <= 0
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }

  static String oneOf(Collection<String> words) {
    return words.size() == 1 ? either(words) : "one of " + either(words);
  }
}

package org.scantling.quantity;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** A small number as a word, from zero to twenty. */
public final class CountWord {
  private static final List<String> WORDS =
      List.of(
          ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
                  + " fifteen sixteen seventeen eighteen nineteen twenty")
              .split(" "));

  private CountWord() {}

  /** What a word counts, if it is one of them. */
  public static OptionalInt of(String word) {
    int count = WORDS.indexOf(word.strip().toLowerCase(Locale.ROOT));
    return count < 0 ? OptionalInt.empty() : OptionalInt.of(count);
  }

  /** All of them, from zero on, in small letters. */
  public static List<String> all() {
    return WORDS;
  }
}

package org.scantling.sayings;

import java.util.Collection;
import java.util.List;

/** Words in a row, as a sentence names them: rules/words/joining.csv. */
public final class Listed {
  private static final String COMMA = ", ";

  private Listed() {}

  /** {@code a}, {@code a or b}, {@code a, b or c}; nothing of no words. */
  public static String or(Collection<String> words) {
    List<String> all = List.copyOf(words);
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : Sayings.of("joining")
            .say("or", "others", String.join(COMMA, all.subList(0, last)), "last", all.get(last));
  }
}

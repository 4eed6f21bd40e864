package org.scantling.print;

import java.util.List;
import org.scantling.sayings.Sayings;

/** Small joints of sentences. */
final class Sentence {
  private Sentence() {}

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> parts) {
    return joined("and", parts, ", ");
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  static String either(List<String> parts) {
    return joined("or", parts, ", ");
  }

  /** {@code a}, {@code a and b}, {@code a; b; and c}: for parts that may have commas. */
  static String phrases(List<String> parts) {
    boolean plain = parts.size() <= 2 && parts.stream().noneMatch(each -> each.contains(","));
    return plain ? list(parts) : joined("and.phrase", parts, "; ");
  }

  private static String joined(String saying, List<String> parts, String between) {
    int last = parts.size() - 1;
    return last <= 0
        ? String.join("", parts)
        : Sayings.of("joints")
            .say(
                saying,
                "parts",
                String.join(between, parts.subList(0, last)),
                "last",
                parts.get(last));
  }
}

package org.scantling.print;

import java.util.List;

/** Small joints of sentences. */
final class Sentence {
  private Sentence() {}

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last <= 0
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  static String either(List<String> parts) {
    int last = parts.size() - 1;
    return last <= 0
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " or " + parts.get(last);
  }

  /** {@code a}, {@code a and b}, {@code a; b; and c}: for parts that may have commas. */
  static String phrases(List<String> parts) {
    int last = parts.size() - 1;
    boolean plain =
        last <= 0 || (last == 1 && parts.stream().noneMatch(each -> each.contains(",")));
    return plain
        ? String.join(" and ", parts)
        : String.join("; ", parts.subList(0, last)) + "; and " + parts.get(last);
  }
}

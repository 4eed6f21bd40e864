package org.scantling.visit;

/** YAML between brackets and braces. */
final class FlowText {
  private FlowText() {}

  /**
   * Where what opens is closed, past quoted text and comments.
   *
   * @param open place of a bracket or brace
   * @return -1 where it is never closed
   */
  static int close(String text, int open) {
    int depth = 0;
    int at = open;
    while (at < text.length()) {
      char sign = text.charAt(at);
      if (sign == '{' || sign == '[') {
        depth++;
      } else if (sign == '}' || sign == ']') {
        depth--;
        if (depth == 0) {
          return at;
        }
      } else if (startsComment(text, at)) {
        at = endOf(text, at, '\n');
      } else if (startsQuote(text, at)) {
        at = endOf(text, at + 1, sign);
      }
      at++;
    }
    return -1;
  }

  private static boolean startsComment(String text, int at) {
    return text.charAt(at) == '#' && at > 0 && Character.isWhitespace(text.charAt(at - 1));
  }

  /** A mark inside a word, as in 5'-8, quotes nothing. */
  private static boolean startsQuote(String text, int at) {
    char sign = text.charAt(at);
    String before = text.substring(0, at).stripTrailing();
    return (sign == '"' || sign == '\'')
        && (before.endsWith(":")
            || before.endsWith(",")
            || before.endsWith("[")
            || before.endsWith("{"));
  }

  private static int endOf(String text, int from, char sign) {
    int at = from;
    while (at < text.length() && text.charAt(at) != sign) {
      at += text.charAt(at) == '\\' && sign == '"' ? 2 : 1;
    }
    return at;
  }
}

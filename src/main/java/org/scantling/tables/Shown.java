package org.scantling.tables;

/**
 * Text as a terminal may be given it: what would drive the terminal, or turn the direction of the
 * letters around, is written out as a backslash, a u and its number.
 */
public final class Shown {
  private static final int JOINS_NOT = 0x200C;
  private static final int JOINS = 0x200D;

  private Shown() {}

  /** True for a sign that does something to the terminal instead of showing. */
  public static boolean drives(int sign) {
    int type = Character.getType(sign);
    return type == Character.CONTROL
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE
        || (type == Character.FORMAT && sign != JOINS && sign != JOINS_NOT);
  }

  /** The text with every such sign written out. */
  public static String of(String text) {
    if (text.codePoints().noneMatch(Shown::drives)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(sign -> add(shown, sign));
    return shown.toString();
  }

  private static void add(StringBuilder shown, int sign) {
    if (!drives(sign)) {
      shown.appendCodePoint(sign);
      return;
    }
    for (char each : Character.toChars(sign)) {
      shown.append(String.format("\\u%04x", (int) each));
    }
  }
}

package org.scantling.drawing;

/** Text as it may stand anywhere in a file of XML: between tags and within quotes. */
public final class Xml {
  private Xml() {}

  /** The one way by which any text comes into a file; what XML has no sign for is left out. */
  public static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().filter(Xml::allowed).forEach(letter -> append(out, letter));
    return out.toString();
  }

  private static void append(StringBuilder out, int letter) {
    switch (letter) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(letter);
    }
  }

  /** Source: XML 1.0, fifth edition, 2.2, production 2. */
  private static boolean allowed(int letter) {
    return letter == '\t'
        || letter == '\n'
        || (letter >= 0x20 && letter <= 0xD7FF)
        || (letter >= 0xE000 && letter <= 0xFFFD)
        || letter >= 0x10000;
  }
}

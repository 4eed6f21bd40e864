package org.scantling.tables;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The size of a timber as people write it: {@code 4 x 4}, {@code 4"x4"}, {@code 4X4}. */
public final class WrittenSize {
  private static final Pattern SIZE =
      Pattern.compile(
          "(\\d{1,4})(?:in|mm)?[\"\u2033\u201d]?(?:x|\u00d7|by|\\*)(\\d{1,4})(?:in|mm)?[\"\u2033\u201d]?s?");

  private WrittenSize() {}

  /** The size as tables have it; the text without its spaces where it is none. */
  public static String plain(String written) {
    String close = written.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    Matcher size = SIZE.matcher(close);
    return size.matches() ? size.group(1) + "x" + size.group(2) : close;
  }
}

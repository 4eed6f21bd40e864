package org.scantling.cli;

/** A size as people write it, told as the tables have it: 2 x 6 and 2×6 are 2x6. */
final class SizeText {
  private SizeText() {}

  static String plain(String written) {
    return written.strip().replaceAll("(?<=\\d)\\s*[xX×*]\\s*(?=\\d)", "x");
  }
}

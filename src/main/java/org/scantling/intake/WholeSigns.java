package org.scantling.intake;

import java.io.Reader;

/**
 * Reads a text in pieces that never end in the middle of a character: the YAML parser fills its
 * buffer to the last place and then asks for the other half of a picture sign, for which it has no
 * room.
 */
final class WholeSigns extends Reader {
  private final String text;
  private int at;

  WholeSigns(String text) {
    this.text = text;
  }

  @Override
  public int read(char[] buffer, int from, int length) {
    if (at >= text.length()) {
      return -1;
    }
    int end = Math.min(text.length(), at + length);
    if (end - at > 1 && end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    text.getChars(at, end, buffer, from);
    int count = end - at;
    at = end;
    return count;
  }

  @Override
  public void close() {
    at = text.length();
  }
}

package org.scantling.tables;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Pattern;

/** Bytes of a file as text in UTF-8, without its byte-order mark. */
public final class Utf8 {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** What a person sees as one character, of however many code points. */
  private static final Pattern SEEN = Pattern.compile("\\X");

  private Utf8() {}

  /** Bytes that are no UTF-8, and the first place where they are none. */
  public static final class NotUtf8 extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;

    private NotUtf8(int line, int character) {
      super(RefusalWords.say("trouble.character", "character", String.valueOf(character)));
      this.line = line;
    }

    /** Where on its line, in words. */
    @Override
    public String getMessage() {
      return Objects.requireNonNull(super.getMessage());
    }

    /** The line, from 1. */
    public int line() {
      return line;
    }
  }

  /**
   * @throws NotUtf8 with the place, counted as a person counts characters
   */
  public static String text(byte[] bytes) throws NotUtf8 {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult end = decoder.decode(in, out, true);
    String text = out.flip().toString();
    String plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    if (end.isError()) {
      throw place(plain);
    }
    return plain;
  }

  private static NotUtf8 place(String before) {
    int line = 1 + (int) before.chars().filter(sign -> sign == '\n').count();
    String onLine = before.substring(before.lastIndexOf('\n') + 1);
    return new NotUtf8(line, 1 + (int) SEEN.matcher(onLine).results().count());
  }
}

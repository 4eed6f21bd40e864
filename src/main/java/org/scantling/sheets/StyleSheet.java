package org.scantling.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** How a page of HTML looks. */
final class StyleSheet {
  static final String TEXT = read();

  private StyleSheet() {}

  private static String read() {
    try (InputStream in = StyleSheet.class.getResourceAsStream("sheet.css")) {
      if (in == null) {
        throw new IllegalStateException("sheet.css is not on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /**
   * The printed page.
   *
   * @param words what stands at the foot of it, written with every sign of it as its number
   */
  static String page(String words, Paper paper) {
    String escaped =
        words
            .codePoints()
            .filter(sign -> !Character.isISOControl(sign))
            .mapToObj(sign -> String.format("\\%06x", sign))
            .collect(Collectors.joining());
    return "@page{size:" + paper.word() + ";@bottom-left{content:\"" + escaped + "\"}}\n";
  }
}

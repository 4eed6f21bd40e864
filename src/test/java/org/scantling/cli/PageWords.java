package org.scantling.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a page of HTML says, word after word. */
final class PageWords {
  private PageWords() {}

  static String of(Path page) throws IOException {
    return plain(
        Files.readString(page)
            .replaceAll("(?s)<style>.*?</style>|<svg.*?</svg>", " ")
            .replaceAll("<[^>]*>", " ")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&#39;", "'")
            .replace("&amp;", "&"));
  }

  /** With one space between two words. */
  static String plain(String text) {
    return text.replace("\u00a0", " ").replaceAll("\\s+", " ").strip();
  }
}

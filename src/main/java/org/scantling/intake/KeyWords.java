package org.scantling.intake;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.scantling.sayings.WordFile;

/** What each key of a file is, in trade words: rules/words/file-keys.csv. */
final class KeyWords {
  private static final String SHAPE = "File";

  private KeyWords() {}

  /** Read when it is first needed. */
  private static final class Table {
    private static final Map<String, String> WORDS = new HashMap<>();

    static {
      WordFile.read("words/file-keys.csv")
          .forEach(row -> WORDS.put(row.cell("file") + " " + row.cell("key"), row.cell("words")));
    }
  }

  /**
   * @param shape the record of a whole file
   * @param path a key of it; places in lists do not matter
   * @throws IllegalStateException when the key has no words
   */
  static String of(Class<?> shape, String path) {
    String key = file(shape) + " " + path.replaceAll("\\[\\d+]", "");
    String words = Table.WORDS.get(key);
    if (words == null) {
      throw new IllegalStateException("rules/words/file-keys.csv has no row for " + key);
    }
    return words;
  }

  /** The kind of file, as the table calls it. */
  static String file(Class<?> shape) {
    return shape.getSimpleName().replace(SHAPE, "").toLowerCase(Locale.ROOT);
  }
}

package org.scantling.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Sentences of one file of words, each with its name and blanks to fill. */
public final class Sayings {
  private final String file;
  private final Map<String, Template> byName = new HashMap<>();

  private Sayings(String file) {
    this.file = file;
  }

  /** Reads a file with the columns {@code saying} and {@code words}. */
  public static Sayings read(String file) {
    Sayings sayings = new Sayings(file);
    for (Map<String, String> row : WordFile.read(file)) {
      sayings.byName.put(row.get("saying"), new Template(row.get("words")));
    }
    return sayings;
  }

  /**
   * @param blanks name and filling in turn
   * @throws IllegalArgumentException when there is no such saying, or a blank stays empty
   */
  public String say(String name, String... blanks) {
    Template words = byName.get(name);
    if (words == null) {
      throw new IllegalArgumentException("rules/" + file + " has no row for '" + name + "'");
    }
    Map<String, String> fill = new HashMap<>();
    for (int i = 0; i + 1 < blanks.length; i += 2) {
      fill.put(blanks[i], blanks[i + 1]);
    }
    return words.filled(blank -> Optional.ofNullable(fill.get(blank)));
  }
}

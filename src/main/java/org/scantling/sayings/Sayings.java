package org.scantling.sayings;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What one kind of page or message says: a file of {@code rules/words} with the columns {@code
 * saying} and {@code words}, each a sentence with blanks to fill.
 */
public final class Sayings {
  private static final Map<String, Sayings> READ = new ConcurrentHashMap<>();

  private final String file;
  private final Map<String, Template> byName = new HashMap<>();

  private Sayings(String file) {
    this.file = file;
    for (WordRow row : WordFile.read(file)) {
      byName.put(row.cell("saying"), new Template(row.cell("words")));
    }
  }

  /**
   * Reads the file once, when it is first needed.
   *
   * @param topic the name of a file in {@code rules/words}, without its ending
   */
  public static Sayings of(String topic) {
    return READ.computeIfAbsent(topic, name -> new Sayings("words/" + name + ".csv"));
  }

  /**
   * A sentence with its blanks filled; a part in square brackets is left out where a blank in it is
   * not given, or given nothing to say.
   *
   * @param blanks name and filling in turn
   * @throws IllegalArgumentException when there is no such saying, or a blank stays empty
   */
  public String say(String name, String... blanks) {
    Map<String, String> fill = new HashMap<>();
    for (int i = 0; i + 1 < blanks.length; i += 2) {
      fill.put(blanks[i], blanks[i + 1]);
    }
    return say(name, fill);
  }

  /** The same, with the fillings by the names of their blanks. */
  public String say(String name, Map<String, String> blanks) {
    Template words = byName.get(name);
    if (words == null) {
      throw new IllegalArgumentException("rules/" + file + " has no row for '" + name + "'");
    }
    return words.filled(
        blank -> Optional.ofNullable(blanks.get(blank)),
        blank ->
            blank.endsWith(Template.FLAG)
                ? blanks.containsKey(blank.replace(Template.FLAG, ""))
                : !blanks.getOrDefault(blank, "").isEmpty());
  }
}

package org.scantling.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.scantling.sayings.WordFile;

/** What others call the members of a walk: rules/words/roles.csv. */
public final class RoleWords {
  private final Map<String, Meant> byWord = new TreeMap<>();

  private RoleWords() {}

  /**
   * @param role the word of this program
   * @param why what is told of the other word; empty where it means the same
   */
  public record Meant(String role, String why) {}

  public static RoleWords read() {
    RoleWords words = new RoleWords();
    WordFile.read("words/roles.csv")
        .forEach(
            row ->
                words.byWord.put(row.cell("word"), new Meant(row.cell("role"), row.cell("why"))));
    return words;
  }

  public Optional<Meant> find(String word) {
    return Optional.ofNullable(byWord.get(word.strip().toLowerCase(Locale.ROOT)));
  }

  /** Every word that is known, in order. */
  public Iterable<String> all() {
    return byWord.keySet();
  }
}

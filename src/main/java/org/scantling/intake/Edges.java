package org.scantling.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scantling.tables.EdgeRow;

/** Recognizes what lies outside the rules by what people call it. */
final class Edges {
  private final List<EdgeRow> rows;

  Edges(List<EdgeRow> rows) {
    this.rows = List.copyOf(rows);
  }

  /** What a key that no file has asks for, by itself or with its value. */
  Optional<EdgeRow> ofKey(String path, String key, String value) {
    if (denies(value)) {
      return Optional.empty();
    }
    return find(path, key).or(() -> find(path, key + " " + value)).or(() -> find(path, value));
  }

  /** True where a key says that there is nothing of the kind. */
  boolean denied(String path, String key, String value) {
    return denies(value) && find(path, key).isPresent();
  }

  private static boolean denies(String value) {
    return List.of("no", "none", "false").contains(value.strip().toLowerCase(Locale.ROOT));
  }

  /** What a word that no list has asks for. */
  Optional<EdgeRow> ofWord(String path, String word) {
    return find(path, word);
  }

  /** What a title hints at, in the words of the title; it may be no more than a name. */
  Optional<String> ofTitle(String title) {
    String plain = plain(title);
    return rows.stream()
        .flatMap(row -> row.title().stream())
        .filter(phrase -> says(plain, phrase))
        .findFirst();
  }

  private Optional<EdgeRow> find(String path, String text) {
    String at = path.replaceAll("\\[\\d+]", "");
    String plain = plain(text);
    return rows.stream()
        .filter(row -> row.keys().isEmpty() || row.keys().contains(at))
        .filter(row -> row.words().stream().anyMatch(phrase -> says(plain, phrase)))
        .findFirst();
  }

  /** A single letter is meant only where nothing stands beside it. */
  private static boolean says(String plain, String phrase) {
    String words = plain(phrase);
    return words.length() > 1
        ? (" " + plain + " ").contains(" " + words + " ")
        : plain.equals(words);
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }
}

package org.scantling.tables;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The words by which lists of others tell timber of one size apart. */
final class MadeWords {
  static final List<String> COLUMNS = List.of("treatment", "species", "grade");

  private final Tables tables;

  MadeWords(Tables tables) {
    this.tables = tables;
  }

  /** What may stand in a column. */
  List<String> known(String column) {
    List<DesignValueRow> timbers = tables.designValues().rows();
    Stream<String> words =
        switch (column) {
          case "treatment" ->
              tables.defaults().rows().stream()
                  .filter(row -> row.id().matches("(treatment|lasting)\\..*"))
                  .map(DefaultWord::word);
          case "species" -> timbers.stream().map(DesignValueRow::species);
          default -> timbers.stream().map(DesignValueRow::grade);
        };
    return words.distinct().toList();
  }

  /** The word itself, the same in other letters, or the one that people also call so. */
  Optional<String> meant(String column, String cell) {
    List<String> known = known(column);
    return known.stream()
        .filter(word -> WordForm.same(word, cell))
        .findFirst()
        .or(
            () ->
                tables.synonyms().rows().stream()
                    .filter(row -> row.list().equals(column))
                    .filter(
                        row -> row.written().stream().anyMatch(word -> WordForm.same(word, cell)))
                    .flatMap(row -> row.means().stream())
                    .filter(known::contains)
                    .findFirst());
  }
}

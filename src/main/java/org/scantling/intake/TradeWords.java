package org.scantling.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** How people write what the files have, and what the sizes of timber measure. */
final class TradeWords {
  private final Synonyms synonyms;
  private final Edges edges;
  private final Map<String, SizeRow> sizes = new HashMap<>();

  private TradeWords(Synonyms synonyms, Edges edges) {
    this.synonyms = synonyms;
    this.edges = edges;
  }

  static TradeWords of(Tables tables) {
    TradeWords words =
        new TradeWords(new Synonyms(tables.synonyms().rows()), new Edges(tables.edges().rows()));
    tables.sizes().rows().forEach(row -> words.sizes.put(row.id(), row));
    return words;
  }

  /** Of a reader that knows no words but those of the files. */
  static TradeWords none() {
    return new TradeWords(new Synonyms(List.of()), new Edges(List.of()));
  }

  Synonyms synonyms() {
    return synonyms;
  }

  Edges edges() {
    return edges;
  }

  Optional<SizeRow> size(String name) {
    return Optional.ofNullable(sizes.get(name));
  }
}

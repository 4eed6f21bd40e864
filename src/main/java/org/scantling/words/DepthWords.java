package org.scantling.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordFile;

/** What a table of hole depths says: rules/words/depths.csv. */
public final class DepthWords {
  private final Map<String, Map<String, String>> byId = new HashMap<>();

  private final UnitSystem units;

  private DepthWords(UnitSystem units) {
    this.units = units;
  }

  public static DepthWords read(UnitSystem units) {
    DepthWords words = new DepthWords(units);
    WordFile.read("words/depths.csv").forEach(row -> words.byId.put(row.get("id"), row));
    return words;
  }

  /** The word in a cell, or the lead of an item. */
  public String cell(String id) {
    return row(id).get("cell");
  }

  /**
   * A sentence with its blanks filled; what is in brackets is left out where its blank is empty.
   *
   * @throws IllegalArgumentException when there is no such row, or another blank stays empty
   */
  public String say(String id, Map<String, String> blanks) {
    String text = row(id).get("text");
    return new Template(units == UnitSystem.METRIC ? MetricText.of(text) : text)
        .filled(name -> Optional.ofNullable(blanks.get(name)));
  }

  public String say(String id) {
    return say(id, Map.of());
  }

  private Map<String, String> row(String id) {
    Map<String, String> row = byId.get(id);
    if (row == null) {
      throw new IllegalArgumentException("rules/words/depths.csv has no row for '" + id + "'");
    }
    return row;
  }
}

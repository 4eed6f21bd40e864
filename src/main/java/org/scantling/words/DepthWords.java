package org.scantling.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Template;
import org.scantling.sayings.WordFile;
import org.scantling.sayings.WordRow;

/** What a table of hole depths says: rules/words/depths.csv. */
public final class DepthWords {
  private final Map<String, WordRow> byId = new HashMap<>();

  private final UnitSystem units;

  private DepthWords(UnitSystem units) {
    this.units = units;
  }

  public static DepthWords read(UnitSystem units) {
    DepthWords words = new DepthWords(units);
    WordFile.read("words/depths.csv").forEach(row -> words.byId.put(row.cell("id"), row));
    return words;
  }

  /** The word in a cell, or the lead of an item. */
  public String cell(String id) {
    return row(id).cell("cell");
  }

  /**
   * A sentence with its blanks filled; what is in brackets is left out where its blank is empty.
   *
   * @throws IllegalArgumentException when there is no such row, or another blank stays empty
   */
  public String say(String id, Map<String, String> blanks) {
    String text = row(id).cell("text");
    return new Template(units == UnitSystem.METRIC ? MetricText.of(text) : text)
        .filled(name -> Optional.ofNullable(blanks.get(name)));
  }

  public String say(String id) {
    return say(id, Map.of());
  }

  private WordRow row(String id) {
    WordRow row = byId.get(id);
    if (row == null) {
      throw new IllegalArgumentException("rules/words/depths.csv has no row for '" + id + "'");
    }
    return row;
  }
}

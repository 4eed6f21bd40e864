package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.csv.CsvFactory;

/** One line of a table that is too long to be held whole. */
public final class CsvLine {
  private static final CsvFactory CSV = new CsvFactory();

  private CsvLine() {}

  /** Its cells, outer spaces gone; empty where its quotes are not closed. */
  public static Optional<List<String>> cells(String line) {
    List<String> cells = new ArrayList<>();
    try (JsonParser parser = CSV.createParser(ObjectReadContext.empty(), line)) {
      if (parser.nextToken() == JsonToken.START_ARRAY) {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          cells.add(parser.getString().strip());
        }
      }
      return Optional.of(cells);
    } catch (JacksonException unclosed) {
      return Optional.empty();
    }
  }
}

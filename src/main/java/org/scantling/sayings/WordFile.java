package org.scantling.sayings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.csv.CsvFactory;

/** The rows of a CSV file of words. */
public final class WordFile {
  private static final CsvFactory CSV = new CsvFactory();
  private static final String FOLDER = "/org/scantling/rules/";

  private WordFile() {}

  /**
   * @throws IllegalStateException when the file is missing or a row has not every column
   */
  public static List<WordRow> read(String name) {
    try (InputStream in = WordFile.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("rules/" + name + " is not on the class path");
      }
      return rows(name, cells(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<List<String>> cells(InputStream in) {
    List<List<String>> lines = new ArrayList<>();
    try (JsonParser parser = CSV.createParser(ObjectReadContext.empty(), in)) {
      while (parser.nextToken() == JsonToken.START_ARRAY) {
        List<String> line = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          line.add(parser.getString().strip());
        }
        lines.add(line);
      }
    }
    return lines;
  }

  private static List<WordRow> rows(String name, List<List<String>> lines) {
    List<String> heading = lines.get(0);
    List<WordRow> rows = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      List<String> line = lines.get(i);
      if (line.size() != heading.size()) {
        throw new IllegalStateException(
            "rules/" + name + ": row '" + line.get(0) + "' must have " + heading.size() + " cells");
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int column = 0; column < heading.size(); column++) {
        row.put(heading.get(column), line.get(column));
      }
      rows.add(new WordRow(name, Collections.unmodifiableMap(row)));
    }
    return rows;
  }
}

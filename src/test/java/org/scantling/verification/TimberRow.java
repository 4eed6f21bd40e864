package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** One published value with its source, what it was given, and how near we must come. */
record TimberRow(Map<String, String> cells) {
  /** The relative slack of the boundary rule in Check: some cells lie at half an inch exactly. */
  private static final double SLACK = 1e-9;

  static List<TimberRow> read(String file) {
    CsvSchema schema = CsvSchema.emptySchema().withHeader();
    try (InputStream in = TimberRow.class.getResourceAsStream("/verification/" + file);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper().readerForMapOf(String.class).with(schema).readValues(in)) {
      return rows.readAll().stream().map(TimberRow::new).toList();
    } catch (IOException e) {
      throw new IllegalStateException(file + " cannot be read", e);
    }
  }

  String text(String column) {
    assertThat(cells).containsKey(column);
    return cells.get(column);
  }

  double number(String column) {
    return Double.parseDouble(text(column));
  }

  boolean yes(String column) {
    assertThat(text(column)).isIn("yes", "no");
    return text(column).equals("yes");
  }

  /** The numbers of the column "given", by name. */
  Map<String, Double> given() {
    Map<String, Double> numbers = new TreeMap<>();
    for (String pair : text("given").split(";", -1)) {
      int equals = pair.indexOf('=');
      numbers.put(pair.substring(0, equals), Double.parseDouble(pair.substring(equals + 1)));
    }
    return numbers;
  }

  void assertReproducedBy(double value) {
    assertThat(value)
        .as("%s, %s %s, %s", this, text("source"), text("edition"), text("table"))
        .isCloseTo(number("expected"), within(number("tolerance") + SLACK * number("expected")));
  }

  @Override
  public String toString() {
    return text("id");
  }
}

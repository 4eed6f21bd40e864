package org.scantling.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvReadFeature;

/**
 * The cells of a CSV file as they stand, with line numbers; the first line is the heading.
 *
 * <p>Read token by token: binding rows by reflection costs more time at start than the tables have.
 */
final class CsvFile {
  private static final CsvFactory CSV = new CsvFactory();
  private static final CsvFactory COMMENTED =
      CsvFactory.builder().enable(CsvReadFeature.ALLOW_COMMENTS).build();

  private final String name;
  private final Line heading;
  private final List<Line> lines;

  /** One line: its number in the file and its cells, outer spaces gone. */
  record Line(int number, List<String> cells) {}

  private CsvFile(String name, Line heading, List<Line> lines) {
    this.name = name;
    this.heading = heading;
    this.lines = lines;
  }

  /** A table of the program. */
  static CsvFile read(String name, InputStream in) {
    return read(name, CSV.createParser(ObjectReadContext.empty(), in));
  }

  /**
   * A table of somebody else, who may have saved it in any encoding.
   *
   * @throws TableException where it is no UTF-8, holds signs that drive a terminal, or no CSV
   */
  static CsvFile theirs(String name, byte[] bytes) {
    return theirs(CSV, name, bytes);
  }

  /** The same, in which lines that begin with # are remarks. */
  static CsvFile commented(String name, byte[] bytes) {
    return theirs(COMMENTED, name, bytes);
  }

  private static CsvFile theirs(CsvFactory format, String name, byte[] bytes) {
    try {
      String text = Utf8.text(bytes);
      CsvFile file = read(name, format.createParser(ObjectReadContext.empty(), text));
      file.refuseControls();
      return file;
    } catch (Utf8.NotUtf8 place) {
      throw new TableException(
          name,
          place.line(),
          "",
          String.valueOf(place.getMessage()),
          RefusalWords.say("csv.encoding"));
    }
  }

  private static CsvFile read(String name, JsonParser opened) {
    List<Line> lines = new ArrayList<>();
    try (JsonParser parser = opened) {
      while (parser.nextToken() == JsonToken.START_ARRAY) {
        addLine(parser, lines);
      }
    } catch (StreamReadException e) {
      throw new TableException(
          name,
          Math.max(1, e.getLocation().getLineNr()),
          "",
          RefusalWords.say("found.quote"),
          RefusalWords.say("csv.quotes"));
    }
    if (lines.isEmpty()) {
      throw new TableException(name, 1, "", "", RefusalWords.say("csv.heading"));
    }
    return new CsvFile(name, lines.get(0), lines.subList(1, lines.size()));
  }

  private void refuseControls() {
    List<Line> all = new ArrayList<>(lines);
    all.add(0, heading);
    for (Line line : all) {
      for (String cell : line.cells()) {
        if (cell.codePoints().anyMatch(Shown::drives)) {
          throw new TableException(name, line.number(), "", cell, RefusalWords.say("csv.plain"));
        }
      }
    }
  }

  private static void addLine(JsonParser parser, List<Line> lines) {
    int number = 0;
    List<String> cells = new ArrayList<>();
    boolean blank = true;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      String cell = parser.getString().strip();
      blank &= cell.isEmpty();
      if (cells.isEmpty()) {
        // only a cell knows its line: the start of a row still points at the row before
        number = parser.currentTokenLocation().getLineNr();
      }
      cells.add(cell);
    }
    if (!blank) {
      lines.add(new Line(number, cells));
    }
  }

  String name() {
    return name;
  }

  Line heading() {
    return heading;
  }

  List<Line> lines() {
    return lines;
  }

  /**
   * For each expected column its place in this file, -1 where the file leaves it out.
   *
   * @throws TableException for an unknown or repeated column, and for a missing one where all are
   *     asked for
   */
  int[] places(String[] columns, boolean all) {
    List<String> found = heading.cells();
    int[] places = new int[columns.length];
    for (int i = 0; i < columns.length; i++) {
      places[i] = found.indexOf(columns[i]);
      if (places[i] < 0 && (all || i == 0)) {
        throw without(columns[i]);
      }
    }
    List<String> known = List.of(columns);
    for (int i = 0; i < found.size(); i++) {
      if (!known.contains(found.get(i)) || found.indexOf(found.get(i)) < i) {
        throw new TableException(
            name,
            heading.number(),
            "",
            found.get(i),
            RefusalWords.say("csv.columns", "columns", String.join(", ", known)));
      }
    }
    return places;
  }

  /** The refusal of a file that has no column of that name, with the columns it has. */
  TableException without(String column) {
    String found = String.join(", ", heading.cells());
    return new TableException(
        name, heading.number(), column, found, RefusalWords.say("csv.column"));
  }

  /** The cells of a line in the order of the expected columns, empty where the file has none. */
  String[] arranged(Line line, int[] places) {
    if (line.cells().size() != heading.cells().size()) {
      throw new TableException(
          name,
          line.number(),
          "",
          RefusalWords.say("found.cells", "cells", String.valueOf(line.cells().size())),
          RefusalWords.say("csv.cells", "cells", String.valueOf(heading.cells().size())));
    }
    String[] cells = new String[places.length];
    for (int i = 0; i < places.length; i++) {
      cells[i] = places[i] < 0 ? "" : line.cells().get(places[i]);
    }
    return cells;
  }
}

package org.scantling.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one table: our rows, then the house's over them. */
final class TableReader {
  private static final String FOLDER = "/org/scantling/rules/tables/";

  private final HouseRules house;
  private final Sources sources;
  private final List<Over> overs = new ArrayList<>();

  TableReader(HouseRules house) {
    this.house = house;
    Sources own = Sources.read(packaged(TableFile.SOURCES));
    this.sources = house.sources().isPresent() ? own.and(house.sources().get()) : own;
  }

  Sources sources() {
    return sources;
  }

  /** The rows of a table, merged and in order, not yet typed. */
  Collection<Row> rows(TableFile table) {
    Map<String, Row> rows = own(packaged(table.fileName()), table, sources);
    CsvFile file = house.tables().get(table);
    if (file != null) {
      lay(file, table, rows);
    }
    return rows.values();
  }

  static Map<String, Row> own(CsvFile file, TableFile table, Sources sources) {
    int[] places = file.places(table.columns(), true);
    Map<String, Row> rows = new LinkedHashMap<>(file.lines().size() * 2);
    for (CsvFile.Line line : file.lines()) {
      Row row = new Row(table.layout(), line.number(), file.arranged(line, places), sources);
      if (rows.put(row.text("id"), row) != null) {
        throw row.refuse("id", RefusalWords.say("tables.id"));
      }
    }
    return rows;
  }

  private void lay(CsvFile file, TableFile table, Map<String, Row> rows) {
    int[] places = file.places(withNote(table.columns()), false);
    List<String> seen = new ArrayList<>();
    CellBounds bounds = new CellBounds();
    Map<String, Row> ours = new LinkedHashMap<>(rows);
    for (CsvFile.Line line : file.lines()) {
      String[] cells = file.arranged(line, places);
      HouseNote note = HouseNote.last(cells);
      String[] own = Arrays.copyOf(cells, table.columns().length);
      Row row = new Row(table.layout(), line.number(), own, sources);
      String id = row.text("id");
      if (seen.contains(id)) {
        throw row.refuse("id", RefusalWords.say("tables.id"));
      }
      seen.add(id);
      Row replaced = rows.get(id);
      if (replaced == null && !table.open()) {
        throw row.refuse(
            "id", RefusalWords.say("tables.known-id", "ids", Near.list(id, rows.keySet())));
      }
      bounds.read(table, row, ours.keySet());
      Row laid =
          replaced == null
              ? new MetricSize(table, rows.values()).filled(row.added(note))
              : row.over(replaced, note, instead(table, row, replaced));
      bounds.hold(table, laid, ours.values());
      if (replaced != null && table.holdsNumbers()) {
        bounds.hold(laid, replaced);
      }
      if (replaced != null) {
        overs.add(new Over(table, laid, replaced, note));
      }
      rows.put(id, laid);
    }
  }

  /** Where an authority says nothing, nothing stood before. */
  private static String instead(TableFile table, Row house, Row ours) {
    return table == TableFile.AUTHORITY ? "" : Instead.of(table.columns(), house, ours);
  }

  private static String[] withNote(String[] columns) {
    String[] all = Arrays.copyOf(columns, columns.length + HouseNote.COLUMNS.length);
    System.arraycopy(HouseNote.COLUMNS, 0, all, columns.length, HouseNote.COLUMNS.length);
    return all;
  }

  /** What the house takes to the side that is not safe, of the tables that were read. */
  List<Loosened> loosened() {
    List<Loosened> found = new ArrayList<>();
    SafeSides sides = new SafeSides();
    for (Over each : overs) {
      found.addAll(sides.loosened(each.table(), each.laid(), each.ours(), each.note()));
    }
    return found;
  }

  /** A row of the house in the place of one of ours. */
  private record Over(TableFile table, Row laid, Row ours, HouseNote note) {}

  private static CsvFile packaged(String name) {
    try (InputStream in = TableReader.class.getResourceAsStream(FOLDER.concat(name))) {
      if (in == null) {
        throw new TableException(name, 0, "", "", RefusalWords.say("tables.packaged"));
      }
      return CsvFile.read(name, in);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " cannot be read", e);
    }
  }
}

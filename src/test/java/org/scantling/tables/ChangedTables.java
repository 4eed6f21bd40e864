package org.scantling.tables;

import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The tables with some cells changed as if our own files said so: no house row, so that nothing
 * differs but the numbers.
 */
public final class ChangedTables {
  private static final Pattern NUMBERS =
      Pattern.compile("-?\\d+(\\.\\d+)?(/\\d+)?(;\\d+(\\.\\d+)?)*");

  /** Columns of words that may look like numbers. */
  private static final Set<String> WORDS = Set.of("id", "stock_family", "word", "where", "note");

  private static final List<Double> FACTORS = List.of(1.03, 0.97, 1.3, 0.7);

  private final Tables ours = Tables.load().readAll();
  private final CellBounds bounds = new CellBounds();
  private final Map<TableFile, Map<String, Row>> rows = new EnumMap<>(TableFile.class);

  /**
   * One number of a table.
   *
   * @param part its place in a cell of several numbers, from 0
   */
  public record Cell(String table, String id, String column, int part) {}

  /** A cell with what it says instead: of a number only that part of it, of words all. */
  public record Change(Cell cell, String text) {}

  public ChangedTables() {
    TableReader reader = new TableReader(HouseRules.none());
    for (TableFile file : TableFile.values()) {
      Map<String, Row> all = new LinkedHashMap<>();
      reader.rows(file).forEach(row -> all.put(row.text("id"), row));
      rows.put(file, all);
    }
  }

  public Tables ours() {
    return ours;
  }

  /** Every number of every table that is said to be read. */
  public List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    rows.forEach(
        (file, all) ->
            all.forEach(
                (id, row) -> {
                  for (String column : file.columns()) {
                    String text = row.optional(column);
                    if (!WORDS.contains(column)
                        && !column.endsWith("_where")
                        && NUMBERS.matcher(text).matches()
                        && read(file, id, column, all)) {
                      for (int part = 0; part < text.split(";").length; part++) {
                        cells.add(new Cell(file.fileName(), id, column, part));
                      }
                    }
                  }
                }));
    return cells;
  }

  private boolean read(TableFile file, String id, String column, Map<String, Row> all) {
    String[] only = new String[file.columns().length];
    Arrays.fill(only, "");
    only[file.layout().column("id")] = id;
    only[file.layout().column(column)] = all.get(id).optional(column);
    try {
      bounds.read(file, all.get(id).with(only), all.keySet());
      return true;
    } catch (TableException unread) {
      return false;
    }
  }

  /** How often a cell can be nudged: a little up, a little down, much up, much down. */
  public static int nudges() {
    return FACTORS.size();
  }

  /** The cell moved that way, or nothing where the file would be refused with it. */
  public Optional<Change> nudged(Cell cell, int way) {
    TableFile file = file(cell.table());
    Row row = rows.get(file).get(cell.id());
    String text = row.optional(cell.column()).split(";")[cell.part()].strip();
    double today = number(text);
    double amount = today * FACTORS.get(way);
    if (whole(row, cell, today)) {
      // Bolts through a pair of headers go two by two.
      int least = cell.id().startsWith("header-paired") ? 2 : 1;
      double away = Math.max(least, Math.rint(Math.abs(amount - today)));
      amount = FACTORS.get(way) > 1 ? today + away : today - away;
    } else if (today == 0) {
      amount = FACTORS.get(way) - 1;
    }
    String moved = BigDecimal.valueOf(Math.round(amount * 1e7) / 1e7).toPlainString();
    Change change = new Change(cell, moved.replaceAll("\\.0$", ""));
    return holds(file, row, change) ? Optional.of(change) : Optional.empty();
  }

  private static double number(String text) {
    String[] parts = text.split("/");
    return Double.parseDouble(parts[0]) / (parts.length > 1 ? Double.parseDouble(parts[1]) : 1);
  }

  private static boolean whole(Row row, Cell cell, double today) {
    boolean counted =
        Set.of("rank", "count", "hands", "metric_count", "coldest_zone").contains(cell.column())
            || cell.column().startsWith("nominal_")
            || cell.column().matches("width_(from|to)_in")
            || (cell.table().equals("demands.csv") && !cell.column().equals("weight"))
            || (cell.column().equals("value") && row.optional("unit").equals("count"));
    return counted && today == Math.rint(today);
  }

  private boolean holds(TableFile file, Row row, Change change) {
    try {
      Row moved = with(file, row, change);
      bounds.hold(file, moved, rows.get(file).values());
      if (file.holdsNumbers()) {
        bounds.hold(moved, row);
      }
      TypedRows.table(file, file.type(), List.of(moved));
      return true;
    } catch (TableException refused) {
      return false;
    }
  }

  private static Row with(TableFile file, Row row, Change change) {
    String[] cells = new String[file.columns().length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = row.optional(file.columns()[i]);
    }
    int place = file.layout().column(change.cell().column());
    if (NUMBERS.matcher(cells[place]).matches()) {
      String[] parts = cells[place].split(";");
      parts[change.cell().part()] = change.text();
      cells[place] = String.join(";", parts);
    } else {
      cells[place] = change.text();
    }
    return row.with(cells);
  }

  private static TableFile file(String name) {
    for (TableFile file : TableFile.values()) {
      if (file.fileName().equals(name)) {
        return file;
      }
    }
    throw new IllegalArgumentException("no table " + name);
  }

  /** The tables with all those changes. */
  public Tables with(Collection<Change> changes) {
    Map<TableFile, Map<String, Row>> changed = new EnumMap<>(TableFile.class);
    for (Change change : changes) {
      TableFile file = file(change.cell().table());
      Map<String, Row> all =
          changed.computeIfAbsent(file, each -> new LinkedHashMap<>(rows.get(each)));
      all.compute(change.cell().id(), (id, row) -> with(file, row, change));
    }
    Tables tables = Tables.load();
    Map<TableFile, Table<?>> read = read(tables);
    read.putAll(read(ours));
    changed.forEach(
        (file, all) -> read.put(file, TypedRows.table(file, file.type(), all.values())));
    return tables;
  }

  /** Which of our rows those changes change, and into what. */
  public Map<TableRow, TableRow> moved(Collection<Change> changes) {
    Tables tables = with(changes);
    Map<TableRow, TableRow> moved = new HashMap<>();
    for (Change change : changes) {
      TableFile file = file(change.cell().table());
      String id = change.cell().id();
      moved.put(read(ours).get(file).row(id), read(tables).get(file).row(id));
    }
    return moved;
  }

  @SuppressWarnings("unchecked") // the field is of that type
  private static Map<TableFile, Table<?>> read(Tables tables) {
    try {
      Field field = Tables.class.getDeclaredField("read");
      field.setAccessible(true);
      return (Map<TableFile, Table<?>>) field.get(tables);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}

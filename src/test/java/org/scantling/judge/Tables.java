package org.scantling.judge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables that the program says it uses, read as plain text. */
final class Tables {
  private static final Path FOLDER = Path.of("rules", "tables");
  private static final Map<String, List<Map<String, String>>> READ = new HashMap<>();

  private Tables() {}

  static synchronized List<Map<String, String>> rows(String table) {
    return READ.computeIfAbsent(table, name -> read(FOLDER.resolve(name + ".csv")));
  }

  static Optional<Map<String, String>> find(String table, String id) {
    return rows(table).stream().filter(row -> id.equals(row.get("id"))).findFirst();
  }

  static Map<String, String> row(String table, String id) {
    return find(table, id)
        .orElseThrow(() -> new IllegalArgumentException(table + " has no row " + id));
  }

  static double number(Map<String, String> row, String column) {
    return number(row.get(column));
  }

  static double value(String table, String id) {
    return number(row(table, id), "value");
  }

  static double valueOr(String table, String id, double otherwise) {
    return find(table, id).map(row -> number(row, "value")).orElse(otherwise);
  }

  /** A number or a fraction. */
  static double number(String text) {
    int bar = text.indexOf('/');
    return bar < 0
        ? Double.parseDouble(text)
        : Double.parseDouble(text.substring(0, bar)) / Double.parseDouble(text.substring(bar + 1));
  }

  static List<Map<String, String>> read(Path file) {
    try {
      List<List<String>> lines = cells(Files.readString(file));
      List<Map<String, String>> rows = new ArrayList<>();
      for (List<String> line : lines.subList(1, lines.size())) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < lines.get(0).size(); i++) {
          row.put(lines.get(0).get(i), i < line.size() ? line.get(i) : "");
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<List<String>> cells(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> line = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : text.replace("\r", "").toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\n')) {
        line.add(cell.toString());
        cell.setLength(0);
        if (c == '\n') {
          lines.add(line);
          line = new ArrayList<>();
        }
      } else {
        cell.append(c);
      }
    }
    return lines;
  }
}

package org.scantling.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A table of the program, cell by cell as it is written, to draw rows of a house from. */
record HouseTable(String name, String heading, List<String[]> rows) {
  private static final Map<String, HouseTable> ALL = all();
  private static final String[] NUMBERS = {
    "0",
    "1",
    "-1",
    "1e12",
    "1e-9",
    "0.5",
    "2",
    "10",
    "1000",
    "1/3",
    "1/0",
    "NaN",
    "",
    "x",
    "yes",
    "no",
    "metric",
    "north-america",
    "none",
    "1e308",
    "-0",
    "12;24",
    "post;header",
    "3.7"
  };

  private static Map<String, HouseTable> all() {
    try (Stream<Path> files = Files.list(Path.of("rules/tables"))) {
      Map<String, HouseTable> all = new TreeMap<>();
      for (Path file : files.filter(each -> !each.endsWith("SOURCES.csv")).toList()) {
        List<String[]> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(file);
        lines.subList(1, lines.size()).forEach(line -> rows.add(cells(line)));
        String name = file.getFileName().toString();
        all.put(name, new HouseTable(name, lines.get(0), rows));
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static HouseTable any(Random random) {
    List<HouseTable> tables = List.copyOf(ALL.values());
    return tables.get(random.nextInt(tables.size()));
  }

  /** A row of a known id, or now and then of a new one, with another value in one of its cells. */
  String row(Random random) {
    String[] like = rows.get(random.nextInt(rows.size()));
    String[] columns = heading.split(",");
    String[] cells = new String[columns.length];
    Arrays.fill(cells, "");
    int changed = 1 + random.nextInt(columns.length - 5);
    boolean isNew = random.nextInt(10) == 0;
    if (isNew) {
      System.arraycopy(like, 0, cells, 0, cells.length);
    }
    cells[0] = isNew ? like[0] + "-of-the-house" : like[0];
    cells[changed] = value(like[changed], changed, random);
    return String.join(",", cells);
  }

  private String value(String today, int column, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> NUMBERS[random.nextInt(NUMBERS.length)];
      case 1 -> rows.get(random.nextInt(rows.size()))[column];
      default -> scaled(today, random);
    };
  }

  private static String scaled(String today, Random random) {
    try {
      double factor = Math.exp(random.nextGaussian() * 2);
      return Double.toString(Double.parseDouble(today) * factor);
    } catch (NumberFormatException word) {
      return today.isEmpty() ? NUMBERS[random.nextInt(NUMBERS.length)] : today + "x";
    }
  }

  /** Cells as written, quotes and all. */
  private static String[] cells(String line) {
    return line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
  }
}

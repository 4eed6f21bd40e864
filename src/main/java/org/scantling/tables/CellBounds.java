package org.scantling.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the cells of a house's row may hold: numbers between bounds that only a slip of the pen
 * passes, words that something reads, and blanks in sentences that something fills.
 */
final class CellBounds {
  private static final String FOLDER = "/org/scantling/schema/";
  private static final String AUTHORITY = TableFile.AUTHORITY.fileName();
  private static final Pattern BLANK = Pattern.compile("\\{[^{}]*}");

  /** How far a number of a rule may be from ours, either way. */
  private static final double MOST_TIMES = 20;

  /** Columns whose words something looks for, so that any other word would be read by nothing. */
  private static final Set<String> LOOKED_FOR =
      Set.of(
          "design-values.csv species",
          "cautions.csv occasion",
          "steps.csv occasion",
          "workings.csv roles",
          "workings.csv part",
          "symbols.csv symbol",
          "symbols.csv scope",
          "symbols.csv part",
          "adjustment-factors.csv factor",
          "adjustment-factors.csv condition");

  /** Columns of from where to where a row holds; what has no such bounds takes none. */
  private static final List<String> BANDS =
      List.of(
          "from_ratio",
          "to_ratio",
          "unity_up_to_psi",
          "nominal_thickness_from_in",
          "nominal_thickness_to_in",
          "nominal_width_from_in",
          "nominal_width_to_in");

  private final List<String[]> bounds = lines("table-bounds.csv");
  private final List<String[]> unread = lines("unread-cells.csv");

  private static List<String[]> lines(String name) {
    try (InputStream in = CellBounds.class.getResourceAsStream(FOLDER.concat(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(name + " must be readable", unreadable);
    }
  }

  /** Refuses what nothing reads, in a row as the house wrote it. */
  void read(TableFile table, Row written, Collection<String> known) {
    for (String[] cell : unread) {
      boolean here = cell[0].equals(table.fileName());
      boolean row = cell[1].equals("*") || cell[1].equals(written.optional("id"));
      if (here && row && cell[2].equals("*")) {
        throw written.refuse("id", readRows(table, written, known));
      }
      if (here && row && !cell[2].equals("*") && !written.optional(cell[2]).isEmpty()) {
        throw written.refuse(cell[2], RefusalWords.say("cells.unread-column"));
      }
    }
  }

  private String readRows(TableFile table, Row written, Collection<String> known) {
    Set<String> unreadIds =
        unread.stream()
            .filter(cell -> cell[0].equals(table.fileName()) && cell[2].equals("*"))
            .map(cell -> cell[1])
            .collect(Collectors.toSet());
    List<String> read = known.stream().filter(id -> !unreadIds.contains(id)).toList();
    return unreadIds.contains("*")
        ? RefusalWords.say("cells.unread-table")
        : RefusalWords.say("cells.unread-row", "rows", Near.list(written.optional("id"), read));
  }

  /**
   * Refuses values that cannot be.
   *
   * @param row as it is read, with what the house left blank filled in
   * @param ours the rows of the program's own table
   */
  void hold(TableFile table, Row row, Collection<Row> ours) {
    for (String[] bound : bounds) {
      boolean meant = bound[5].isEmpty() || bound[5].equals(row.optional("id"));
      if (bound[0].equals(table.fileName()) && meant && !row.optional(bound[1]).isEmpty()) {
        numbers(row, bound);
      }
    }
    for (String column : table.columns()) {
      if (LOOKED_FOR.contains(table.fileName() + " " + column)) {
        words(row, column, ours);
      }
      blanks(row, column, ours);
    }
  }

  private static void numbers(Row row, String[] bound) {
    double low = Double.parseDouble(bound[2]);
    double high = Double.parseDouble(bound[3]);
    for (double amount : row.amounts(bound[1])) {
      boolean whole = bound[4].isEmpty() || amount == Math.rint(amount);
      if (!(amount >= low && amount <= high && whole)) {
        String kind = bound[4].isEmpty() ? "cells.between" : "cells.whole-between";
        throw row.refuse(bound[1], RefusalWords.say(kind, "least", bound[2], "most", bound[3]));
      }
    }
  }

  /** One number of a rule against the one it takes the place of. */
  void hold(Row row, Row replaced) {
    for (String column : BANDS) {
      if (row.has(column)
          && replaced.optional(column).isEmpty()
          && !row.optional(column).isEmpty()) {
        throw row.refuse(column, RefusalWords.say("cells.no-band"));
      }
    }
    if (bounds.stream().anyMatch(each -> isOf(row, each))) {
      return;
    }
    double today = replaced.number("value");
    double amount = row.number("value");
    boolean counted = row.optional("unit").equals("count") && today == Math.rint(today);
    if (counted && amount != Math.rint(amount)) {
      throw row.refuse(
          "value", RefusalWords.say("cells.whole", "such", replaced.optional("value")));
    }
    boolean near = amount >= today / MOST_TIMES && amount <= today * MOST_TIMES;
    if (today > 0 && !near) {
      throw row.refuse(
          "value", RefusalWords.say("cells.near", "today", replaced.optional("value")));
    }
    if (today == 0 && (amount < 0 || amount > MOST_TIMES)) {
      throw row.refuse(
          "value",
          RefusalWords.say(
              "cells.between", "least", "0", "most", String.valueOf((int) MOST_TIMES)));
    }
  }

  /** A row that has bounds of its own is not held against what it takes the place of. */
  private static boolean isOf(Row row, String[] bound) {
    return bound[0].equals(AUTHORITY) && row.fileName().equals(AUTHORITY);
  }

  private static void words(Row row, String column, Collection<Row> ours) {
    Set<String> known = new TreeSet<>();
    ours.forEach(each -> known.addAll(parts(each.optional(column))));
    for (String part : parts(row.optional(column))) {
      if (!known.contains(part)) {
        throw row.refuse(
            column, RefusalWords.say("cells.asked-for", "words", String.join(", ", known)));
      }
    }
  }

  private static List<String> parts(String cell) {
    List<String> parts = new ArrayList<>();
    for (String part : cell.split(";")) {
      parts.add(part.strip());
    }
    return parts;
  }

  private static void blanks(Row row, String column, Collection<Row> ours) {
    Set<String> blanks = blanks(row.optional(column));
    if (blanks.isEmpty()) {
      return;
    }
    Set<String> known = new TreeSet<>();
    for (Row each : ours) {
      if (table(row, each)) {
        known.addAll(blanks(each.optional(column)));
      }
    }
    blanks.removeAll(known);
    if (!blanks.isEmpty()) {
      throw row.refuse(
          column,
          known.isEmpty()
              ? RefusalWords.say("cells.no-blanks", "blanks", String.join(", ", blanks))
              : RefusalWords.say("cells.blanks", "blanks", String.join(", ", known)));
    }
  }

  /** In a table that is not open every row has its own blanks, else all rows share theirs. */
  private static boolean table(Row row, Row other) {
    return row.open() || row.optional("id").equals(other.optional("id"));
  }

  private static Set<String> blanks(String cell) {
    return BLANK
        .matcher(cell)
        .results()
        .map(found -> found.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}

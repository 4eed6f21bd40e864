package org.scantling.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.SourceKind;

/**
 * Which way a number of a standard may be moved without asking: schema/safe-sides.csv. A house that
 * moves one the other way, or one that has no plain safe side, says on what that rests.
 */
final class SafeSides {
  private static final String FILE = "/org/scantling/schema/safe-sides.csv";

  /**
   * One line of the file.
   *
   * @param rows what the ids begin with for which it holds; empty for all
   * @param prefix of the columns that hold the source of the number
   * @param side more or less; empty where neither is plainly safe
   */
  record Side(String table, String rows, String column, String prefix, String side) {
    boolean safe(double ours, double theirs) {
      return ours == theirs || side.equals(theirs > ours ? "more" : "less");
    }
  }

  private final List<Side> sides;

  SafeSides() {
    try (InputStream in = SafeSides.class.getResourceAsStream(FILE)) {
      sides =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .skip(1)
              .map(line -> line.split(",", -1))
              .map(cells -> new Side(cells[0], cells[1], cells[2], cells[3], cells[4]))
              .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(FILE + " must be readable", unreadable);
    }
  }

  /** The line for a number: of several the one that names the rows most closely. */
  Optional<Side> of(TableFile table, String id, String column) {
    return sides.stream()
        .filter(each -> each.table().equals(table.fileName()) && each.column().equals(column))
        .filter(each -> id.startsWith(each.rows()))
        .max(Comparator.comparingInt(each -> each.rows().length()));
  }

  /**
   * The numbers of a standard that a row moves to the wrong side.
   *
   * @param laid the row of the house over ours
   * @throws TableException where it says nothing of what that rests on
   */
  List<Loosened> loosened(TableFile table, Row laid, Row ours, HouseNote note) {
    List<Loosened> found = new ArrayList<>();
    for (String column : table.columns()) {
      Optional<Side> side = of(table, ours.text("id"), column);
      boolean numbers = !ours.optional(column).isEmpty() && !laid.optional(column).isEmpty();
      if (side.isEmpty()
          || !numbers
          || ours.source(side.get().prefix()).kind() != SourceKind.STANDARD
          || side.get().safe(ours.number(column), laid.number(column))) {
        continue;
      }
      if (note.basis().isEmpty()) {
        throw laid.refuse(column, accepted(side.get(), ours, column));
      }
      found.add(loosened(side.get(), laid, ours, note));
    }
    return found;
  }

  private static String accepted(Side side, Row ours, String column) {
    return RefusalWords.say(
        side.side().isEmpty() ? "house.no-side" : "house." + side.side(),
        "ours",
        Instead.amount(ours, column),
        "standard",
        ours.source(side.prefix()).text(),
        "column",
        HouseNote.BASIS);
  }

  private static Loosened loosened(Side side, Row laid, Row ours, HouseNote note) {
    String id = ours.text("id");
    String what = ours.has("statement") ? ours.text("statement") : id + ", " + side.column();
    return new Loosened(
        id,
        what,
        Instead.amount(ours, side.column()),
        Instead.amount(laid, side.column()),
        ours.source(side.prefix()).text(),
        note.who(),
        note.why(),
        note.basis(),
        laid.source());
  }
}

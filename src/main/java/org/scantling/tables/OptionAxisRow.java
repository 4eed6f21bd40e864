package org.scantling.tables;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Source;

/**
 * Something of a site that is tried otherwise when whole structures are compared.
 *
 * @param id its path in the site file
 * @param toward which of its values are tried
 * @param most how many steps at most, where it is a number
 * @param crossed true where it is tried together with the other crossed ones, false where alone
 * @param alone values that are tried alone all the same
 * @param overStated true where it is tried though the site file states it
 * @param statement what is tried
 */
public record OptionAxisRow(
    String id,
    Toward toward,
    OptionalInt most,
    boolean crossed,
    List<String> alone,
    boolean overStated,
    String statement,
    Source source,
    String note)
    implements TableRow {
  private static final String BASE = "base";

  /** Which of the values are tried. */
  public enum Toward {
    /** Less of a number. */
    LESS,
    /** Less and more of a number. */
    BOTH,
    /** Every word. */
    WORDS,
    /** Of a largest size, every size smaller than what is built. */
    SMALLER,
    /** Everything else that the site file names. */
    EACH;

    private static final String LARGEST = "preferences.largest-";

    /** True where what has that path can be tried so. */
    boolean goes(String path) {
      if (path.equals(BASE)) {
        return this == EACH;
      }
      if (path.startsWith(LARGEST)) {
        return this == SMALLER;
      }
      Unit unit = Demand.of(path).unit();
      return switch (this) {
        case LESS -> unit == Unit.INCH;
        case BOTH -> unit == Unit.INCH || path.equals(Demand.BAYS.path());
        case WORDS -> unit == Unit.COUNT && !path.equals(Demand.BAYS.path());
        case SMALLER, EACH -> false;
      };
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public OptionAxisRow {
    alone = List.copyOf(alone);
  }

  /** True for a value that is tried together with those of other rows. */
  public boolean crosses(String value) {
    return crossed && !alone.contains(value);
  }

  static OptionAxisRow read(Row row) {
    String word =
        row.oneOf(
            "toward",
            Stream.of(Toward.values())
                .filter(each -> each.goes(row.text("id")))
                .map(Toward::word)
                .toArray(String[]::new));
    Toward toward = Toward.valueOf(word.toUpperCase(Locale.ROOT));
    return new OptionAxisRow(
        row.text("id"),
        toward,
        toward != Toward.WORDS && toward != Toward.EACH
            ? OptionalInt.of((int) row.positive("most"))
            : OptionalInt.empty(),
        row.yes("crossed"),
        row.optional("alone").isEmpty() ? List.of() : row.list("alone"),
        row.yes("over_stated"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }
}

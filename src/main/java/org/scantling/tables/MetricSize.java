package org.scantling.tables;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A metric size that a house adds. Its name tells what it measures; what else the house leaves
 * blank is as the size has it that measures nearest, of two as near the larger one: what it may
 * serve as, in which lengths it is sold, and from which band of the design values it is read.
 */
final class MetricSize {
  private static final String MARKET = "market";
  private static final Pattern NAME = Pattern.compile("(\\d{2,3})x(\\d{2,3})");
  private static final Pattern UNIT = Pattern.compile(".*[mc]m");
  private static final double HAIR_IN = 1e-3;

  private final TableFile table;
  private final Collection<Row> others;

  /**
   * @param others the rows that the table has already
   */
  MetricSize(TableFile table, Collection<Row> others) {
    this.table = table;
    this.others = others;
  }

  /** The row as it is, but for a metric size. */
  Row filled(Row row) {
    return table == TableFile.SIZES && metric(row) ? like(measured(row)) : row;
  }

  private static boolean metric(Row row) {
    String market = row.optional(MARKET);
    return market.equals(Market.METRIC)
        || (market.isEmpty() && UNIT.matcher(row.optional("thickness_in")).matches());
  }

  private static Row measured(Row row) {
    Map<String, String> blanks = new LinkedHashMap<>();
    blanks.put(MARKET, Market.METRIC);
    Matcher name = NAME.matcher(row.text("id"));
    if (name.matches()) {
      blanks.put("thickness_in", name.group(1) + " mm");
      blanks.put("width_in", name.group(2) + " mm");
    }
    return row.filled(blanks);
  }

  private Row like(Row row) {
    Optional<Row> nearest =
        others.stream()
            .filter(other -> other.optional(MARKET).equals(Market.METRIC))
            .filter(other -> square(other) == square(row))
            .min(
                Comparator.<Row>comparingLong(other -> Math.round(apart(other, row) / HAIR_IN))
                    .thenComparing(Comparator.comparingDouble(MetricSize::area).reversed()));
    return nearest.map(other -> like(row, other)).orElse(row);
  }

  private static Row like(Row row, Row other) {
    Map<String, String> blanks = new LinkedHashMap<>();
    for (String column : new String[] {"nominal_thickness_in", "nominal_width_in"}) {
      blanks.put(column, other.text(column));
    }
    blanks.put("roles", other.text("roles"));
    blanks.put("stock_family", other.text("stock_family"));
    int place = (int) other.number("rank");
    blanks.put("rank", Integer.toString(area(row) < area(other) ? place - 1 : place + 1));
    Row banded = row.filled(blanks);
    MemberClass due =
        MemberClass.of(
            banded.positive("nominal_thickness_in"), banded.positive("nominal_width_in"));
    return banded.filled(Map.of("member_class", due.word()));
  }

  private static boolean square(Row row) {
    return Math.abs(row.positive("thickness_in") - row.positive("width_in")) < HAIR_IN;
  }

  private static double apart(Row one, Row other) {
    return Math.abs(one.positive("thickness_in") - other.positive("thickness_in"))
        + Math.abs(one.positive("width_in") - other.positive("width_in"));
  }

  private static double area(Row row) {
    return row.positive("thickness_in") * row.positive("width_in");
  }
}

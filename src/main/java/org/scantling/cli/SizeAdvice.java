package org.scantling.cli;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Listed;
import org.scantling.spans.Role;
import org.scantling.tables.Market;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** What somebody is told who names a size that nobody sells. */
final class SizeAdvice {
  private static final Pattern NUMBERS = Pattern.compile(".*?(\\d{1,4})\\D+(\\d{1,4})\\D*");

  private SizeAdvice() {}

  static String of(String written, Tables tables, Role role, UnitSystem units) {
    return CommandWords.say(
        "spans.size",
        "written",
        written.strip(),
        "near",
        Listed.or(near(written, tables.sizes().rows())),
        "role",
        role.word(),
        "sizes",
        tables.sizes(role.member(), market(units)).stream()
            .map(SizeRow::id)
            .collect(Collectors.joining(", ")));
  }

  static String market(UnitSystem units) {
    return units == UnitSystem.METRIC ? Market.METRIC : Market.NORTH_AMERICA;
  }

  /** The next smaller and the next wider of the same thickness. */
  private static List<String> near(String written, List<SizeRow> rows) {
    Matcher match = NUMBERS.matcher(written);
    if (!match.matches()) {
      return List.of();
    }
    int thick = Integer.parseInt(match.group(1));
    int wide = Integer.parseInt(match.group(2));
    List<SizeRow> alike = rows.stream().filter(row -> row.id().startsWith(thick + "x")).toList();
    return Stream.concat(
            alike.stream()
                .filter(row -> width(row) <= wide)
                .max(Comparator.comparingInt(SizeAdvice::width))
                .stream(),
            alike.stream()
                .filter(row -> width(row) > wide)
                .min(Comparator.comparingInt(SizeAdvice::width))
                .stream())
        .map(SizeRow::id)
        .toList();
  }

  private static int width(SizeRow row) {
    return Integer.parseInt(row.id().substring(row.id().indexOf('x') + 1));
  }
}

package org.scantling.print;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.rulebook.Figure;
import org.scantling.sayings.Sayings;

/** Rows of tables in words, as long or as short as there is room for. */
final class FigureWords {
  private static final Sayings SAYINGS = Sayings.of("rulebook");
  private static final int MOST_SINGLY = 3;
  private static final int RATIO_PLACES = 4;

  private final UnitSystem units;

  FigureWords(UnitSystem units) {
    this.units = units;
  }

  /** A number with its unit, ratios to four places. */
  String value(Figure figure) {
    return figure.measure().map(this::value).orElse(figure.word());
  }

  private String value(Measure measure) {
    if (measure.unit() != Unit.RATIO) {
      return MeasureText.print(measure, units);
    }
    return BigDecimal.valueOf(measure.amount())
        .setScale(RATIO_PLACES, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  static String source(Source source) {
    return source.kind() == SourceKind.COMMON_PRACTICE
        ? Sayings.of("voice").say("common-practice")
        : source.text();
  }

  /** The rows in half a line: one by one where they are few, else by table. */
  String brief(List<Figure> figures) {
    if (figures.size() <= MOST_SINGLY) {
      return figures.stream().map(this::brief).collect(Collectors.joining("; "));
    }
    Map<String, Long> tables =
        figures.stream()
            .collect(Collectors.groupingBy(Figure::table, TreeMap::new, Collectors.counting()));
    return tables.entrySet().stream()
        .map(
            table ->
                SAYINGS.say("rows", "count", table.getValue().toString(), "table", table.getKey()))
        .collect(Collectors.joining(", "));
  }

  private String brief(Figure figure) {
    String value = value(figure);
    return figure.id()
        + (value.isEmpty() ? "" : " " + value)
        + " ("
        + source(figure.source())
        + ")";
  }
}

package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.sayings.Sayings;

/** Numbers as the lists say them, in one system of units. */
final class Said {
  private static final Sayings SAYINGS = Sayings.of("lists");

  private final UnitSystem units;

  Said(UnitSystem units) {
    this.units = units;
  }

  UnitSystem units() {
    return units;
  }

  String length(double inches) {
    return units == UnitSystem.IMPERIAL ? Length.feetAndInches(inches) : Length.millimetres(inches);
  }

  /** Many pieces of something long together: metres, for nobody counts its millimetres. */
  String run(double inches) {
    return units == UnitSystem.IMPERIAL
        ? Length.feetAndInches(inches)
        : decimals(inches * Inches.IN_MILLIMETRES / 1000, 1) + " m";
  }

  String lengths(List<Double> inches) {
    return inches.stream().map(this::length).collect(Collectors.joining(", "));
  }

  String weight(double pounds) {
    return MeasureText.print(new Measure(pounds, Unit.POUND_WEIGHT), units);
  }

  String volume(double cuFt) {
    return units == UnitSystem.IMPERIAL
        ? decimals(cuFt, 1) + " cu ft"
        : decimals(Unit.CUBIC_FOOT.toMetric(cuFt), 2) + " m³";
  }

  /** What there is to a cubic foot, to a cubic metre. */
  static String aCubicMetre(double perCuFt) {
    return decimals(perCuFt / Unit.CUBIC_FOOT.toMetric(1), 0);
  }

  String percent(double ratio) {
    return decimals(100 * ratio, 1) + " %";
  }

  /** Hundredths of the yard's own money. */
  String money(long cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }

  String degrees(double degrees) {
    return decimals(degrees, 1) + "°";
  }

  String quantity(BuyingLine.Quantity quantity) {
    if (quantity.unit().equals("cu ft")) {
      return volume(quantity.amount());
    }
    if (quantity.unit().equals("ft") && units == UnitSystem.METRIC) {
      return decimals(quantity.amount() * 0.3048, 1) + " m";
    }
    String number = decimals(quantity.amount(), 1);
    return switch (quantity.unit()) {
      case "pieces" -> number;
      case "ft" -> number + " ft";
      default -> SAYINGS.say("quantity." + quantity.unit(), "count", number);
    };
  }

  static String source(Source source) {
    return source.kind() == SourceKind.COMMON_PRACTICE
        ? SAYINGS.say("common-practice")
        : source.text();
  }

  /** As a number that begins a sentence or stands in one: a single thing in letters. */
  static String count(int count) {
    return count == 1 ? SAYINGS.say("one") : Integer.toString(count);
  }

  static String all(List<String> names) {
    return names.stream()
        .reduce((one, other) -> SAYINGS.say("both", "one", one, "other", other))
        .orElse("");
  }

  static String decimals(double amount, int places) {
    BigDecimal value = BigDecimal.valueOf(amount).setScale(places, RoundingMode.HALF_UP);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}

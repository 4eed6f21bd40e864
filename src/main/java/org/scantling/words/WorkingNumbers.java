package org.scantling.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;

/**
 * Numbers of a working: four figures that count, lengths in decimals, so that whoever goes over it
 * by hand comes to the same result.
 */
final class WorkingNumbers {
  private static final MathContext FIGURES = new MathContext(4, RoundingMode.HALF_UP);

  private final UnitSystem units;

  WorkingNumbers(UnitSystem units) {
    this.units = units;
  }

  String say(Measure measure) {
    Measure length = metres(measure);
    boolean metric = units == UnitSystem.METRIC;
    Unit unit = length.unit();
    double amount = metric ? unit.toMetric(length.amount()) : length.amount();
    String symbol = metric ? unit.metricSymbol() : unit.imperialSymbol();
    return (figures(amount) + " " + symbol).strip();
  }

  /** In metric, moments and areas are of metres. */
  private Measure metres(Measure measure) {
    return units == UnitSystem.METRIC && measure.unit() == Unit.INCH
        ? new Measure(measure.amount() / Inches.PER_FOOT, Unit.FOOT)
        : measure;
  }

  private static String figures(double amount) {
    BigDecimal rounded = BigDecimal.valueOf(amount).round(FIGURES);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}

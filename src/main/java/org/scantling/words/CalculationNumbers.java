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
final class CalculationNumbers {
  private static final MathContext FIGURES = new MathContext(4, RoundingMode.HALF_UP);

  /** Nearer than this a number is what it is printed as. */
  private static final double EXACT = 1e-9;

  private final UnitSystem units;

  CalculationNumbers(UnitSystem units) {
    this.units = units;
  }

  String say(Measure measure) {
    Measure length = metres(measure);
    Unit unit = length.unit();
    double amount = metric(unit) ? unit.toMetric(length.amount()) : length.amount();
    return (figures(amount) + " " + unit(unit)).strip();
  }

  /** How a unit is printed. */
  String unit(Unit unit) {
    Unit printed = metres(new Measure(1, unit)).unit();
    return metric(printed) ? printed.metricSymbol() : printed.imperialSymbol();
  }

  private boolean metric(Unit unit) {
    return units == UnitSystem.METRIC || unit == Unit.PSF_FROM_KPA;
  }

  /** In metric, moments and areas are of metres. */
  private Measure metres(Measure measure) {
    return units == UnitSystem.METRIC && measure.unit() == Unit.INCH
        ? new Measure(measure.amount() / Inches.PER_FOOT, Unit.FOOT)
        : measure;
  }

  private static String figures(double amount) {
    BigDecimal rounded = BigDecimal.valueOf(amount).round(FIGURES);
    if (rounded.signum() == 0) {
      return "0";
    }
    double left = Math.abs(amount - rounded.doubleValue());
    boolean exact = left <= EXACT * Math.abs(amount);
    return exact ? rounded.stripTrailingZeros().toPlainString() : full(rounded);
  }

  /** A number that was rounded shows all its figures, zeros as well. */
  private static String full(BigDecimal rounded) {
    int missing = FIGURES.getPrecision() - rounded.precision();
    return rounded.setScale(rounded.scale() + Math.max(0, missing)).toPlainString();
  }
}

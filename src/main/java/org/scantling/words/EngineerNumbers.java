package org.scantling.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;

/** Numbers as worked: a length that no tape shows is told in decimals, not as the next fraction. */
final class EngineerNumbers {
  private static final int PARTS = 16;
  private static final double ON_THE_TAPE_IN = 1e-4;

  private final UnitSystem units;

  EngineerNumbers(UnitSystem units) {
    this.units = units;
  }

  String say(Measure measure) {
    double amount = measure.amount();
    double parts = amount * PARTS;
    boolean onTape = Math.abs(parts - Math.rint(parts)) <= ON_THE_TAPE_IN * PARTS;
    if (measure.unit() != Unit.INCH || onTape) {
      return MeasureText.print(measure, units);
    }
    return units == UnitSystem.METRIC
        ? decimals(amount * Inches.IN_MILLIMETRES, 1) + " mm"
        : decimals(amount, 3) + " in";
  }

  private static String decimals(double amount, int places) {
    return BigDecimal.valueOf(amount).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }
}

package org.scantling.tables;

import org.scantling.quantity.Unit;

/** The words of the {@code unit} column. */
final class UnitWords {
  private UnitWords() {}

  static Unit unit(Row row) {
    switch (row.text("unit")) {
      case "in":
        return Unit.INCH;
      case "ft":
        return Unit.FOOT;
      case "lb":
        return Unit.POUND;
      case "in-lb":
        return Unit.INCH_POUND;
      case "psf":
        return Unit.PSF;
      case "psi":
        return Unit.PSI;
      case "pcf":
        return Unit.PCF;
      case "mph":
        return Unit.MPH;
      case "deg":
        return Unit.DEGREE;
      case "percent":
        return Unit.PERCENT;
      case "count":
        return Unit.COUNT;
      case "ratio":
        return Unit.RATIO;
      default:
        throw row.refuse(
            "unit", "in, ft, lb, in-lb, psf, psi, pcf, mph, deg, percent, count, ratio");
    }
  }
}

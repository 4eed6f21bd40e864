package org.scantling.words;

import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;

/** Numbers as a builder says them. */
final class BuilderNumbers {
  /** Beyond it a ratio is no share of anything, but a slenderness. */
  private static final double GREATEST_SHARE = 5;

  private final UnitSystem units;

  BuilderNumbers(UnitSystem units) {
    this.units = units;
  }

  String say(Measure measure) {
    return measure.unit() == Unit.RATIO
        ? ratio(measure.amount())
        : MeasureText.print(measure, units);
  }

  /** A share as percent, a slenderness as it is; what is not all is not told as all. */
  private static String ratio(double ratio) {
    long percent = Math.round(ratio * 100);
    if (ratio < 1 && percent == 100) {
      return Math.floor(ratio * 1000) / 10 + " %";
    }
    return ratio < GREATEST_SHARE
        ? percent + " %"
        : MeasureText.imperial(Measure.count(Math.round(ratio * 10) / 10.0));
  }
}

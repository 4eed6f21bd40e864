package org.scantling.visit;

import java.util.Locale;
import java.util.regex.Pattern;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.UnitSystem;

/** An amount told back to whoever gave it, in the kind of units that he used. */
final class WrittenBack {
  private static final Pattern METRIC =
      Pattern.compile(".*\\d\\s*(?:kpa|kn/m2|kn/m²|km/h|m/s|c-days)$");

  private WrittenBack() {}

  static String of(Measure amount, String typed) {
    boolean metric =
        TapeText.isMetric(typed)
            || METRIC.matcher(typed.strip().toLowerCase(Locale.ROOT)).matches();
    return MeasureText.print(amount, metric ? UnitSystem.METRIC : UnitSystem.IMPERIAL);
  }
}

package org.scantling.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;

/** A cell of a row by the name of its column: {@code frostDepthIn} 96 is frost depth 96 in. */
final class Cell {
  private static final Map<String, String> UNITS =
      Map.of("In", " in", "Psf", " psf", "Mph", " mph", "Ratio", "", "Factor", "");

  private Cell() {}

  static String say(String column, double number) {
    List<String> parts = Arrays.asList(column.split("(?=[A-Z])"));
    String last = parts.get(parts.size() - 1);
    boolean unit = UNITS.containsKey(last);
    String name = String.join(" ", unit ? parts.subList(0, parts.size() - 1) : parts);
    return name.toLowerCase(Locale.ROOT)
        + " "
        + MeasureText.imperial(Measure.count(number))
        + UNITS.getOrDefault(last, "");
  }
}

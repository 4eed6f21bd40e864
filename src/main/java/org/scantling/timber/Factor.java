package org.scantling.timber;

import java.util.List;
import java.util.Map;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * One named factor on a reference value, such as C_D 1.15.
 *
 * @param symbol the factor's symbol as the standard prints it, not blank
 * @param value the factor, above 0
 */
public record Factor(String symbol, double value) {
  /** The factors by the names under which a working counts them. */
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("C_D", "duration"),
          Map.entry("C_M", "wet"),
          Map.entry("C_t", "heat"),
          Map.entry("C_F", "size"),
          Map.entry("C_fu", "flat"),
          Map.entry("C_i", "incising"),
          Map.entry("C_r", "repetitive"),
          Map.entry("C_L", "stability"),
          Map.entry("C_P", "buckled"),
          Map.entry("C_b", "factor"),
          Map.entry("C_g", "group"),
          Map.entry("C_delta", "geometry"),
          Map.entry("C_eg", "end-grain"),
          Map.entry("C_tn", "toe"),
          Map.entry("depth", "deep"),
          Map.entry("one plane", "planes"));

  public Factor {
    if (symbol.isBlank()) {
      throw new IllegalArgumentException("a factor must have a symbol, such as C_D");
    }
    Require.positive(symbol, value, "");
  }

  /** The same as a number of a working. */
  FormulaLine in(FormulaLine line) {
    return line.with(NAMES.getOrDefault(symbol, symbol), Measure.ratio(value));
  }

  static double product(List<Factor> factors) {
    double product = 1;
    for (Factor factor : factors) {
      product *= factor.value();
    }
    return product;
  }
}

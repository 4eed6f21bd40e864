package org.scantling.timber;

import java.util.List;

/**
 * One named factor on a reference value, such as C_D 1.15.
 *
 * @param symbol the factor's symbol as the standard prints it, not blank
 * @param value the factor, above 0
 */
public record Factor(String symbol, double value) {
  public Factor {
    if (symbol.isBlank()) {
      throw new IllegalArgumentException("a factor must have a symbol, such as C_D");
    }
    Require.positive(symbol, value, "");
  }

  static double product(List<Factor> factors) {
    double product = 1;
    for (Factor factor : factors) {
      product *= factor.value();
    }
    return product;
  }
}

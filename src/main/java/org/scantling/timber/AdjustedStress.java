package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Require;

/**
 * A design value with every factor that was laid on it, so that it can be explained.
 *
 * @param symbol the value's symbol, such as Fb
 * @param referencePsi the tabulated reference value in psi, above 0
 * @param factors every factor that applies, in the standard's order, those of 1 as well
 */
public record AdjustedStress(String symbol, double referencePsi, List<Factor> factors) {
  public AdjustedStress {
    Require.positive(symbol, referencePsi, "psi");
    factors = List.copyOf(factors);
  }

  /** The adjusted value in psi: the reference value times all its factors. */
  public double psi() {
    return referencePsi * Factor.product(factors);
  }

  /** The same value with one more factor, for those found later: C_L, C_P, C_b. */
  public AdjustedStress with(Factor factor) {
    List<Factor> longer = new ArrayList<>(factors);
    longer.add(factor);
    return new AdjustedStress(symbol, referencePsi, longer);
  }

  /** The same value with the factors of that symbol left out, for starred values such as Fb*. */
  public AdjustedStress without(String factorSymbol) {
    List<Factor> shorter =
        factors.stream().filter(factor -> !factor.symbol().equals(factorSymbol)).toList();
    return new AdjustedStress(symbol, referencePsi, shorter);
  }
}

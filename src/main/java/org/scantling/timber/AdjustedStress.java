package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * A design value with every factor that was laid on it, so that it can be explained.
 *
 * @param symbol the value's symbol, such as Fb
 * @param referencePsi the tabulated reference value in psi, above 0
 * @param factors every factor that applies, in the standard's order, those of 1 as well
 */
public record AdjustedStress(String symbol, double referencePsi, List<Factor> factors)
    implements Calculated {
  private static final String DURATION = "C_D";

  /** Factors that are laid on what a piece is worth where it stands. */
  private static final Set<String> LATER = Set.of(DURATION, "C_L", "C_P", "C_b");

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

  /** What the piece is worth where it stands, before load, length and seat are counted. */
  public AdjustedStress lasting() {
    return new AdjustedStress(symbol, referencePsi, laid(false));
  }

  /** C_D, 1 for a value that knows no load duration. */
  double durationFactor() {
    return Factor.product(
        factors.stream().filter(factor -> factor.symbol().equals(DURATION)).toList());
  }

  private List<Factor> laid(boolean later) {
    return factors.stream().filter(factor -> LATER.contains(factor.symbol()) == later).toList();
  }

  /** The value of the table times each factor. */
  @Override
  public List<FormulaLine> lines() {
    return List.of(line(symbol));
  }

  /** The same under the name of another formula. */
  FormulaLine line(String id) {
    FormulaLine line =
        FormulaLine.of(id, Measure.psi(psi())).with("reference", Measure.psi(referencePsi));
    for (Factor factor : factors) {
      line = factor.in(line);
    }
    return line;
  }

  /**
   * The same as it ends a check: what the piece is worth where it stands, told once for all loads,
   * times what load, length and seat make of it. It is the same product in another order.
   */
  FormulaLine allowed(String id) {
    FormulaLine line =
        FormulaLine.of(id, Measure.psi(psi())).with("lasting", Measure.psi(lasting().psi()));
    for (Factor factor : laid(true)) {
      line = factor.in(line);
    }
    return line;
  }
}

package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * What one fastener carries, with every factor that was laid on it.
 *
 * @param symbol the value's symbol, Z for sideways and W for pulling out
 * @param referenceLb the value before factors, above 0
 * @param factors every factor that applies: C_D, C_M, C_t, C_g, C_delta, C_eg, C_di, C_tn
 */
public record AdjustedForce(String symbol, double referenceLb, List<Factor> factors)
    implements Calculated {
  public AdjustedForce {
    Require.positive(symbol, referenceLb, "lb");
    factors = List.copyOf(factors);
  }

  /** The adjusted value in pounds: the reference value times all its factors. */
  public double lb() {
    return referenceLb * Factor.product(factors);
  }

  /** The same value with one more factor. */
  public AdjustedForce with(Factor factor) {
    List<Factor> longer = new ArrayList<>(factors);
    longer.add(factor);
    return new AdjustedForce(symbol, referenceLb, longer);
  }

  /** The value before factors times each of them. */
  @Override
  public List<FormulaLine> lines() {
    FormulaLine line =
        FormulaLine.of(symbol.equals("W") ? "pulled" : "pushed", Measure.pounds(lb()))
            .with("single", Measure.pounds(referenceLb));
    for (Factor factor : factors) {
      line = factor.in(line);
    }
    return List.of(line);
  }
}

package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * The factor λ of the modified Berggren equation, solved instead of read off its chart.
 *
 * <p>Neumann's two-phase solution with equal frozen and thawed properties: b solves √π b exp(b²) /
 * μ = 1/erf(b) − α/erfc(b), and λ = b √(2/μ).
 *
 * @param thermalRatio α, warmth of the ground over frost at the surface
 * @param fusionFactor μ, heat of cooling over heat of freezing
 * @param rootFactor b
 * @param lambdaFactor λ, above 0 and below 1
 */
public record NeumannFactor(
    double thermalRatio, double fusionFactor, double rootFactor, double lambdaFactor)
    implements Calculated {
  private static final double ROOT_PI = Math.sqrt(Math.PI);
  private static final int HALVINGS = 200;

  /**
   * Finds λ.
   *
   * @param thermalRatio α, warmth of the ground over frost at the surface, zero or more
   * @param fusionFactor μ, heat of cooling over heat of freezing, above zero
   * @return λ and the root b that it is made of
   * @throws IllegalArgumentException if α is negative or μ not above zero
   *     <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd edition 1959, section 11.2
   *     (from memory)
   *     <p>Worked number: α 0.5 and μ 0.2 give 0.864.
   */
  public static NeumannFactor of(double thermalRatio, double fusionFactor) {
    Require.zeroOrMore("thermal ratio", thermalRatio, "");
    Require.positive("fusion parameter", fusionFactor, "");
    double low = 0;
    // Without warmth in the ground √π b exp(b²) erf(b) = μ, whose left side exceeds 2b², so the
    // root lies under √(μ/2) for every α.
    double high = Math.sqrt(fusionFactor / 2);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (excess(middle, thermalRatio, fusionFactor) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double root = 0.5 * (low + high);
    return new NeumannFactor(thermalRatio, fusionFactor, root, root * Math.sqrt(2 / fusionFactor));
  }

  /** Rises with b from minus infinity; zero at the root. */
  private static double excess(double b, double thermalRatio, double fusionFactor) {
    return ROOT_PI * b * Math.exp(b * b) / fusionFactor
        - 1 / ErrorFunction.erf(b)
        + thermalRatio / ErrorFunction.erfc(b);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("lambda", Measure.ratio(lambdaFactor))
            .with("solved", Measure.ratio(rootFactor))
            .with("fusion", Measure.ratio(fusionFactor))
            .with("thermal", Measure.ratio(thermalRatio)));
  }
}

package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * The factor λ of the modified Berggren equation, solved instead of read off its chart.
 *
 * <p>Neumann's two-phase solution with equal frozen and thawed properties: b solves √π b exp(b²) /
 * μ = 1/erf(b) − α/erfc(b), and λ = b √(2/μ).
 */
public final class NeumannFactor {
  private static final double ROOT_PI = Math.sqrt(Math.PI);
  private static final int HALVINGS = 200;

  private NeumannFactor() {}

  /**
   * Finds λ.
   *
   * @param thermalRatio α, warmth of the ground over frost at the surface, zero or more
   * @param fusionFactor μ, heat of cooling over heat of freezing, above zero
   * @return λ, above 0 and below 1
   * @throws IllegalArgumentException if α is negative or μ not above zero
   *     <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd edition 1959, section 11.2
   *     (from memory)
   *     <p>Worked number: α 0.5 and μ 0.2 give 0.864.
   */
  public static double lambda(double thermalRatio, double fusionFactor) {
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
    return 0.5 * (low + high) * Math.sqrt(2 / fusionFactor);
  }

  /** Rises with b from minus infinity; zero at the root. */
  private static double excess(double b, double thermalRatio, double fusionFactor) {
    return ROOT_PI * b * Math.exp(b * b) / fusionFactor
        - 1 / ErrorFunction.erf(b)
        + thermalRatio / ErrorFunction.erfc(b);
  }
}

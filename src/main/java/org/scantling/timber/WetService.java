package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * What wet service (over 19 percent moisture) takes away, with the two steps of the tables.
 *
 * <p>Weak pieces lose nothing: where Fb·C_F is not above its threshold, C_M on Fb is 1, and the
 * same for Fc·C_F. So a stronger grade can end up barely above a weaker one.
 *
 * <p>Source: NDS Supplement, 2018, Tables 4A and 4B (footnotes to C_M; thresholds of 1150 psi and
 * 750 psi from memory).
 *
 * @param factors C_M on each property
 * @param bendingThresholdPsi the greatest Fb·C_F that keeps C_M at 1 on Fb; 0 for no such step
 * @param compressionThresholdPsi the greatest Fc·C_F that keeps C_M at 1 on Fc; 0 for no such step
 */
public record WetService(
    PropertyFactors factors, double bendingThresholdPsi, double compressionThresholdPsi) {
  private static final double SLACK = 1e-9;

  public WetService {
    Require.zeroOrMore("threshold of C_M on Fb", bendingThresholdPsi, "psi");
    Require.zeroOrMore("threshold of C_M on Fc", compressionThresholdPsi, "psi");
  }

  /** Dry service: no wet service factor. */
  public static WetService dry() {
    return new WetService(PropertyFactors.none(), 0, 0);
  }

  /**
   * C_M on Fb for a piece of that strength.
   *
   * @param sizedBendingPsi Fb·C_F
   * @return 1 up to the threshold, the wet service factor above it. Worked: 1150 psi keeps 1, 1170
   *     psi (900 × 1.3) takes 0.85.
   */
  public double bendingFactor(double sizedBendingPsi) {
    return upTo(bendingThresholdPsi, sizedBendingPsi) ? 1 : factors.bendingFactor();
  }

  /**
   * C_M on Fc for a piece of that strength.
   *
   * @param sizedCompressionPsi Fc·C_F
   * @return 1 up to the threshold, the wet service factor above it
   */
  public double compressionFactor(double sizedCompressionPsi) {
    return upTo(compressionThresholdPsi, sizedCompressionPsi) ? 1 : factors.compressionFactor();
  }

  private static boolean upTo(double thresholdPsi, double valuePsi) {
    return valuePsi <= thresholdPsi * (1 + SLACK);
  }
}

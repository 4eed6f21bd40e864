package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * C_g: how evenly the fasteners of one row share their load.
 *
 * @param u spread of the row
 * @param m its inner root
 * @param stiffnessRatio the weaker piece's stretch stiffness over the stiffer one's
 * @param value C_g, above 0 and not above 1
 */
public record GroupAction(double u, double m, double stiffnessRatio, double value) {

  /**
   * A row of fasteners along the load.
   *
   * @param fastenerCount how many in the row, 1 or more
   * @param spacingIn from fastener to fastener, above 0
   * @param slipLbPerIn gamma, load over slip of one fastener, above 0
   */
  public record Row(int fastenerCount, double spacingIn, double slipLbPerIn) {
    public Row {
      if (fastenerCount < 1) {
        throw new IllegalArgumentException(
            "a row of " + fastenerCount + " fasteners must have 1 or more");
      }
      Require.positive("spacing in the row", spacingIn, "in");
      Require.positive("load over slip", slipLbPerIn, "lb/in");
    }

    /** A row of bolts or lags between two pieces of wood. */
    public static Row inWood(int fastenerCount, double spacingIn, double diameterIn) {
      Require.positive("fastener diameter", diameterIn, "in");
      return new Row(fastenerCount, spacingIn, 180_000 * Math.pow(diameterIn, 1.5));
    }

    /** A row of bolts or lags between wood and a steel plate. */
    public static Row onSteel(int fastenerCount, double spacingIn, double diameterIn) {
      Require.positive("fastener diameter", diameterIn, "in");
      return new Row(fastenerCount, spacingIn, 270_000 * Math.pow(diameterIn, 1.5));
    }
  }

  /**
   * The group action factor of one row.
   *
   * @param row the fasteners
   * @param mainStiffnessLb E·A of the main piece's whole section, above 0
   * @param sideStiffnessLb E·A of the side piece or of all side pieces, above 0
   * @return the factor and its working
   *     <p>Source: NDS, 2018, 11.3.6, from memory. Worked: two 1/2 in bolts 2 in apart in 1.5 × 5.5
   *     on 3.5 × 3.5 in, E 1 600 000 psi, give 0.998.
   */
  public static GroupAction of(Row row, double mainStiffnessLb, double sideStiffnessLb) {
    Require.positive("stiffness E·A of the main piece", mainStiffnessLb, "lb");
    Require.positive("stiffness E·A of the side piece", sideStiffnessLb, "lb");
    double give = 1 / mainStiffnessLb + 1 / sideStiffnessLb;
    double u = 1 + row.slipLbPerIn() * row.spacingIn() / 2 * give;
    double m = u - Math.sqrt(u * u - 1);
    double ratio =
        Math.min(mainStiffnessLb, sideStiffnessLb) / Math.max(mainStiffnessLb, sideStiffnessLb);
    return new GroupAction(u, m, ratio, Math.min(1, factor(row.fastenerCount(), m, ratio)));
  }

  private static double factor(int count, double m, double ratio) {
    double toCount = Math.pow(m, count);
    double squared = toCount * toCount;
    double share = (1 + ratio * toCount) * (1 + m) - 1 + squared;
    return m * (1 - squared) / (count * share) * (1 + ratio) / (1 - m);
  }

  /** The factor to lay on Z. */
  public Factor asFactor() {
    return new Factor("C_g", value);
  }
}

package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * C_g: how evenly the fasteners of one row share their load.
 *
 * @param row the fasteners
 * @param mainStiffnessLb E·A of the main piece
 * @param sideStiffnessLb E·A of the side piece or pieces
 * @param spreadRatio what u is over 1
 * @param u spread of the row
 * @param m its inner root
 * @param stiffnessRatio the weaker piece's stretch stiffness over the stiffer one's
 * @param value C_g, above 0 and not above 1
 */
public record GroupAction(
    Row row,
    double mainStiffnessLb,
    double sideStiffnessLb,
    double spreadRatio,
    double u,
    double m,
    double stiffnessRatio,
    double value)
    implements Calculated {

  /**
   * A row of fasteners along the load.
   *
   * @param fastenerCount how many in the row, 1 or more
   * @param spacingIn from fastener to fastener, above 0
   * @param diameterIn of a fastener, above 0
   * @param slipLbPerIn gamma, load over slip of one fastener, above 0
   */
  public record Row(int fastenerCount, double spacingIn, double diameterIn, double slipLbPerIn) {
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
      return new Row(fastenerCount, spacingIn, diameterIn, 180_000 * Math.pow(diameterIn, 1.5));
    }

    /** A row of bolts or lags between wood and a steel plate. */
    public static Row onSteel(int fastenerCount, double spacingIn, double diameterIn) {
      Require.positive("fastener diameter", diameterIn, "in");
      return new Row(fastenerCount, spacingIn, diameterIn, 270_000 * Math.pow(diameterIn, 1.5));
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
    double spread = row.slipLbPerIn() * row.spacingIn() / 2 * give;
    double u = 1 + spread;
    double m = u - Math.sqrt(u * u - 1);
    double ratio =
        Math.min(mainStiffnessLb, sideStiffnessLb) / Math.max(mainStiffnessLb, sideStiffnessLb);
    return new GroupAction(
        row,
        mainStiffnessLb,
        sideStiffnessLb,
        spread,
        u,
        m,
        ratio,
        Math.min(1, factor(row.fastenerCount(), m, ratio)));
  }

  /** The same for pieces with their own working. */
  public static GroupAction of(Row row, AxialStiffness main, AxialStiffness side) {
    return of(row, main.lb(), side.lb());
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

  /**
   * None for one fastener, which shares with nobody. The spread is told as what it is over 1, for u
   * is so near to 1 that its root would lose its digits: m is the same.
   */
  @Override
  public List<FormulaLine> lines() {
    if (row.fastenerCount() == 1) {
      return List.of();
    }
    Measure slip = new Measure(row.slipLbPerIn(), Unit.POUND_PER_INCH);
    Measure spread = Measure.ratio(spreadRatio);
    return List.of(
        FormulaLine.of("slip", slip).with("diameter", Measure.inches(row.diameterIn())),
        FormulaLine.of("spread", spread)
            .with("slip", slip)
            .with("spacing", Measure.inches(row.spacingIn()))
            .with("main", Measure.pounds(mainStiffnessLb))
            .with("side", Measure.pounds(sideStiffnessLb)),
        FormulaLine.of("root", Measure.ratio(m)).with("spread", spread),
        FormulaLine.of("stiffness-ratio", Measure.ratio(stiffnessRatio))
            .with("less", Measure.pounds(Math.min(mainStiffnessLb, sideStiffnessLb)))
            .with("more", Measure.pounds(Math.max(mainStiffnessLb, sideStiffnessLb))),
        FormulaLine.of("group", Measure.ratio(value))
            .with("root", Measure.ratio(m))
            .with("count", Measure.count(row.fastenerCount()))
            .with("stretch", Measure.ratio(stiffnessRatio)));
  }
}

package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * What one fastener in side grain holds against being pulled out, before factors.
 *
 * @param by which formula
 * @param specificGravityRatio G of the wood that holds the point
 * @param diameterIn of the fastener
 * @param perInchLb W, pounds for each inch of grip, above 0
 * @param gripIn length of nail, or of thread without its tip, in the piece that holds the point,
 *     above 0
 */
public record Withdrawal(
    By by, double specificGravityRatio, double diameterIn, double perInchLb, double gripIn)
    implements Calculated {
  public Withdrawal {
    Require.positive("withdrawal value", perInchLb, "lb/in");
    Require.positive("grip of the fastener", gripIn, "in");
  }

  /** The formulas, each with the line that tells it. */
  public enum By {
    NAIL("withdrawal-nail"),
    LAG("withdrawal-lag"),
    WOOD_SCREW("withdrawal-screw");

    private final String id;

    By(String id) {
      this.id = id;
    }
  }

  /**
   * A smooth nail or spike.
   *
   * @param specificGravityRatio G of the wood that holds the point
   * @param diameterIn diameter of the nail, above 0
   * @param gripIn length in that wood, above 0
   * @return 1380·G^2.5·D for each inch
   *     <p>Source: NDS, 2018, 12.2.3. Worked: 0.162 in in G 0.50 holds 39.5 lb/in.
   */
  public static Withdrawal ofNail(double specificGravityRatio, double diameterIn, double gripIn) {
    double g = density(specificGravityRatio);
    double perInchLb = 1380 * Math.pow(g, 2.5) * thickness(diameterIn);
    return new Withdrawal(By.NAIL, g, diameterIn, perInchLb, gripIn);
  }

  /**
   * A lag screw.
   *
   * @param specificGravityRatio G of the wood that holds the thread
   * @param diameterIn nominal diameter, above 0
   * @param gripIn thread in that wood, without the tip, above 0
   * @return 1800·G^1.5·D^0.75 for each inch
   *     <p>Source: NDS, 2018, 12.2.1. Worked: 1/2 in in G 0.50 holds 378 lb/in.
   */
  public static Withdrawal ofLag(double specificGravityRatio, double diameterIn, double gripIn) {
    double g = density(specificGravityRatio);
    double perInchLb = 1800 * Math.pow(g, 1.5) * Math.pow(thickness(diameterIn), 0.75);
    return new Withdrawal(By.LAG, g, diameterIn, perInchLb, gripIn);
  }

  /**
   * A wood screw.
   *
   * @param specificGravityRatio G of the wood that holds the thread
   * @param diameterIn nominal diameter, above 0
   * @param gripIn thread in that wood, above 0
   * @return 2850·G²·D for each inch
   *     <p>Source: NDS, 2018, 12.2.2, from memory. Worked: 0.190 in in G 0.50 holds 135 lb/in.
   */
  public static Withdrawal ofWoodScrew(
      double specificGravityRatio, double diameterIn, double gripIn) {
    double g = density(specificGravityRatio);
    double perInchLb = 2850 * g * g * thickness(diameterIn);
    return new Withdrawal(By.WOOD_SCREW, g, diameterIn, perInchLb, gripIn);
  }

  /** W times the grip, ready for its factors. */
  public AdjustedForce unadjusted() {
    return new AdjustedForce("W", holdsLb(), List.of());
  }

  private double holdsLb() {
    return perInchLb * gripIn;
  }

  @Override
  public List<FormulaLine> lines() {
    Measure perInch = new Measure(perInchLb, Unit.POUND_PER_INCH);
    return List.of(
        FormulaLine.of(by.id, perInch)
            .with("gravity", Measure.ratio(specificGravityRatio))
            .with("diameter", Measure.inches(diameterIn)),
        FormulaLine.of("grip", Measure.pounds(holdsLb()))
            .with("each-inch", perInch)
            .with("grip", Measure.inches(gripIn)));
  }

  private static double density(double specificGravityRatio) {
    Require.positive("specific gravity", specificGravityRatio, "");
    return Require.below("specific gravity", specificGravityRatio, "", 1.5);
  }

  private static double thickness(double diameterIn) {
    return Require.positive("fastener diameter", diameterIn, "in");
  }
}

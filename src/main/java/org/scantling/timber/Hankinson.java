package org.scantling.timber;

import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Strength at an angle to the grain, between along and across.
 *
 * <p>The same form serves lag screws pulled and pushed at once (NDS 2018, 12.4.1, from memory):
 * along is Z', across is W' times the grip, the angle is from the wood's surface.
 *
 * @param along the strength along the grain, in any unit
 * @param across the strength across the grain, in the same unit
 * @param angleDegrees from 0 (along) to 90 (across)
 * @param sineSquareRatio of that angle
 * @param value the strength at that angle, in that unit
 */
public record Hankinson(
    double along, double across, double angleDegrees, double sineSquareRatio, double value) {

  /**
   * A strength at an angle to the grain.
   *
   * @param along the strength along the grain, above 0, in any unit
   * @param across the strength across the grain, above 0, in the same unit
   * @param angleDegrees from 0 (along) to 90 (across)
   * @return the strength at that angle and how it was worked
   *     <p>Source: NDS, 2018, 3.10.3 and Appendix J. Worked: 1500 along and 625 across at 30
   *     degrees gives 1111.
   */
  public static Hankinson of(double along, double across, double angleDegrees) {
    Require.positive("strength along the grain", along, "");
    Require.positive("strength across the grain", across, "");
    Require.within("angle to the grain", angleDegrees, "degrees", 0, 90);
    double sine = Math.sin(Math.toRadians(angleDegrees));
    double sine2 = sine * sine;
    double value = along * across / (along * sine2 + across * (1 - sine2));
    return new Hankinson(along, across, angleDegrees, sine2, value);
  }

  /** The strength alone. */
  public static double at(double along, double across, double angleDegrees) {
    return of(along, across, angleDegrees).value();
  }

  /** Of pressures. */
  FormulaLine line(String id) {
    return FormulaLine.of(id, Measure.psi(value))
        .with("along", Measure.psi(along))
        .with("across", Measure.psi(across))
        .with("square", Measure.ratio(sineSquareRatio))
        .with("angle", Measure.count(angleDegrees));
  }
}

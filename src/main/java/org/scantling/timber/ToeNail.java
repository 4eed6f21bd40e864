package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How a slant-driven nail lies in the two pieces.
 *
 * <p>Driven at about 30 degrees to the piece it starts in, a third of its length up from that
 * piece's end.
 *
 * @param lengthIn length of the nail, above 0
 */
public record ToeNail(double lengthIn) implements Calculated {
  private static final double SLANT_DEGREES = 30;

  public ToeNail {
    Require.positive("nail length", lengthIn, "in");
  }

  /**
   * The bearing length in the piece it starts in, in inches.
   *
   * <p>Source: NDS, 2018, 12.1.6 and Figure 12A, from memory. Worked: a 3.5 in nail gives 1.17 in.
   */
  public double sideIn() {
    return lengthIn / 3;
  }

  /**
   * How deep it goes into the other piece, in inches.
   *
   * <p>Source: NDS, 2018, 12.1.6 and Figure 12A, from memory. Worked: a 3.5 in nail gives 1.86 in.
   */
  public double penetrationIn() {
    return lengthIn * Math.cos(Math.toRadians(SLANT_DEGREES)) - lengthIn / 3;
  }

  /**
   * How far from the face that it is driven through it crosses from one piece into the other, in
   * inches.
   *
   * <p>Source: NDS, 2018, Figure 12A, from memory. Worked: a 3.5 in nail gives 0.67 in.
   */
  public double crossingIn() {
    return sideIn() * Math.tan(Math.toRadians(SLANT_DEGREES));
  }

  /** Where it crosses. */
  public FormulaLine crossing() {
    return FormulaLine.of("crossing", Measure.inches(crossingIn()))
        .with("length", Measure.inches(lengthIn));
  }

  @Override
  public List<FormulaLine> lines() {
    Measure length = Measure.inches(lengthIn);
    return List.of(
        FormulaLine.of("toe-side", Measure.inches(sideIn())).with("length", length),
        FormulaLine.of("toe-penetration", Measure.inches(penetrationIn())).with("length", length));
  }
}

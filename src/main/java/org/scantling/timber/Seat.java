package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Where one timber bears on another across the grain.
 *
 * @param breadthIn contact across the piece, above 0
 * @param lengthIn lb, contact along the grain of the piece, above 0: the notch's seat, not the
 *     whole face
 * @param toEndIn from the contact to the nearer end of the piece, 0 or more
 */
public record Seat(double breadthIn, double lengthIn, double toEndIn) implements Calculated {
  private static final double LONG_SEAT_IN = 6;
  private static final double CLEAR_OF_END_IN = 3;

  public Seat {
    Require.positive("seat breadth", breadthIn, "in");
    Require.positive("seat length", lengthIn, "in");
    Require.zeroOrMore("distance of the seat to the end", toEndIn, "in");
  }

  /** Contact area in square inches. */
  public double areaIn2() {
    return breadthIn * lengthIn;
  }

  /**
   * C_b: a short seat away from the end borrows strength from the wood beside it.
   *
   * @return (lb + 3/8)/lb for seats under 6 in long and at least 3 in from the end, else 1
   *     <p>Source: NDS, 2018, 3.10.4. Worked: 1.5 in long, 12 in from the end gives 1.25.
   */
  public double bearingFactor() {
    boolean borrows = lengthIn < LONG_SEAT_IN && toEndIn >= CLEAR_OF_END_IN;
    return borrows ? (lengthIn + 0.375) / lengthIn : 1;
  }

  /** C_b where it is not 1. */
  @Override
  public List<FormulaLine> lines() {
    double factor = bearingFactor();
    return factor > 1
        ? List.of(
            FormulaLine.of("bearing-factor", Measure.ratio(factor))
                .with("seat", Measure.inches(lengthIn)))
        : List.of();
  }
}

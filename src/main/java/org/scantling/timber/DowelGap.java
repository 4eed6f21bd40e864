package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * The forces at which a dowel through two pieces with a gap between them yields by tilting or
 * bending, before any reduction.
 *
 * <p>In every mode the pieces press back with a moment, or the dowel resists with its own, and the
 * force works over an arm that the gap lengthens: a P² + b P = c.
 *
 * <p>Source: AWC Technical Report 12, 2015, Table 1-1 (from memory).
 *
 * @param gapIn between the pieces, 0 or more
 */
record DowelGap(Dowel dowel, DowelMember main, DowelMember side, double gapIn) {

  double tiltsLb() {
    return forceLb(
        1 / (4 * pressLbPerIn(side)) + 1 / (4 * pressLbPerIn(main)),
        halfIn(side) + gapIn + halfIn(main),
        turnsInLb(side) + turnsInLb(main));
  }

  double tiltsInMainLb() {
    return forceLb(
        1 / (2 * pressLbPerIn(side)) + 1 / (4 * pressLbPerIn(main)),
        gapIn + halfIn(main),
        bendsInLb() + turnsInLb(main));
  }

  double tiltsInSideLb() {
    return forceLb(
        1 / (4 * pressLbPerIn(side)) + 1 / (2 * pressLbPerIn(main)),
        halfIn(side) + gapIn,
        turnsInLb(side) + bendsInLb());
  }

  double bendsTwiceLb() {
    return forceLb(
        1 / (2 * pressLbPerIn(side)) + 1 / (2 * pressLbPerIn(main)), gapIn, 2 * bendsInLb());
  }

  /** What the equations are made of, before the modes. */
  List<FormulaLine> lines() {
    return List.of(
        press("press-main", main),
        press("press-side", side),
        turns("turns-main", "press-main", main),
        turns("turns-side", "press-side", side),
        FormulaLine.of("bends", Measure.inchPounds(bendsInLb()))
            .with("yield", Measure.psi(dowel.bendingYieldPsi()))
            .with("shank", Measure.inches(dowel.shankDiameterIn())));
  }

  private FormulaLine press(String id, DowelMember piece) {
    return FormulaLine.of(id, new Measure(pressLbPerIn(piece), Unit.POUND_PER_INCH))
        .with("bearing", Measure.psi(piece.bearingPsi()))
        .with("shank", Measure.inches(dowel.shankDiameterIn()));
  }

  private FormulaLine turns(String id, String press, DowelMember piece) {
    return FormulaLine.of(id, Measure.inchPounds(turnsInLb(piece)))
        .with(press, new Measure(pressLbPerIn(piece), Unit.POUND_PER_INCH))
        .with("long", Measure.inches(piece.bearingLengthIn()));
  }

  /** The numbers of a mode's equation. */
  FormulaLine in(FormulaLine line) {
    return line.with("gap", Measure.inches(gapIn))
        .with("main-long", Measure.inches(main.bearingLengthIn()))
        .with("side-long", Measure.inches(side.bearingLengthIn()))
        .with("press-main", new Measure(pressLbPerIn(main), Unit.POUND_PER_INCH))
        .with("press-side", new Measure(pressLbPerIn(side), Unit.POUND_PER_INCH))
        .with("turns-main", Measure.inchPounds(turnsInLb(main)))
        .with("turns-side", Measure.inchPounds(turnsInLb(side)))
        .with("bends", Measure.inchPounds(bendsInLb()));
  }

  private static double forceLb(double a, double armIn, double momentInLb) {
    return (Math.sqrt(armIn * armIn + 4 * a * momentInLb) - armIn) / (2 * a);
  }

  /** q: how hard a piece presses back along an inch of the dowel. */
  private double pressLbPerIn(DowelMember piece) {
    return piece.bearingPsi() * dowel.shankDiameterIn();
  }

  private static double halfIn(DowelMember piece) {
    return piece.bearingLengthIn() / 2;
  }

  /** What a piece resists while a straight dowel turns in it. */
  private double turnsInLb(DowelMember piece) {
    return pressLbPerIn(piece) * piece.bearingLengthIn() * piece.bearingLengthIn() / 4;
  }

  /** The moment at which the dowel itself yields. */
  private double bendsInLb() {
    return dowel.bendingYieldPsi() * Math.pow(dowel.shankDiameterIn(), 3) / 6;
  }
}

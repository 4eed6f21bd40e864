package org.scantling.workings;

import java.util.List;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.tables.Tables;

/** Makes the steps of a working, each with the clause of its row. */
final class CalculationSteps {
  /** What of a strength-level wind an allowable stress is held against. */
  static final double WIND_SHARE = LoadCombination.DEAD_WIND.factor(LoadKind.WIND);

  private static final double NO_MOMENT_IN_LB = 1e-6;

  private final Tables tables;

  CalculationSteps(Tables tables) {
    this.tables = tables;
  }

  CalculationStep of(String id, Measure result, Evidence evidence) {
    return new CalculationStep(id, result, evidence, tables.workings().row(id).source());
  }

  /**
   * The lines of a kernel as steps.
   *
   * @param prefix how the ids of their rows begin
   * @param about what every step tells besides its numbers, such as the check it stands under
   */
  List<CalculationStep> of(String prefix, List<FormulaLine> lines, Evidence about) {
    return of(prefix, lines, line -> about);
  }

  /** The same where not every line tells the same besides its numbers. */
  List<CalculationStep> of(
      String prefix, List<FormulaLine> lines, Function<FormulaLine, Evidence> about) {
    return lines.stream().map(each -> as(prefix + each.id(), each, about.apply(each))).toList();
  }

  /** One line of a kernel as a step of that id. */
  CalculationStep as(String id, FormulaLine line, Evidence about) {
    return of(id, line.result(), Evidence.of(line).and(about));
  }

  static Measure area(double areaIn2) {
    return new Measure(areaIn2 / Inches.SQUARE_PER_SQUARE_FOOT, Unit.SQUARE_FOOT);
  }

  /** A length that an area in square feet is made of. */
  static Measure feet(double lengthIn) {
    return new Measure(lengthIn / Inches.PER_FOOT, Unit.FOOT);
  }

  static Measure pounds(double forceLb) {
    return new Measure(forceLb, Unit.POUND);
  }

  static Measure perInch(double loadLbPerIn) {
    return new Measure(loadLbPerIn, Unit.POUND_PER_INCH);
  }

  /** What is left where moments cancel out is nothing. */
  static Measure moment(double momentInLb) {
    return new Measure(isNoMoment(momentInLb) ? 0 : momentInLb, Unit.INCH_POUND);
  }

  static boolean isNoMoment(double momentInLb) {
    return Math.abs(momentInLb) < NO_MOMENT_IN_LB;
  }
}

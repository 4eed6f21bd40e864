package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What comes to one end of a rail in one combination.
 *
 * @param ownLbPerIn its own weight
 */
record RailForce(LoadCombination combination, JointRailChecks.Loads loads, double ownLbPerIn) {

  double sideLb() {
    return combination.factor(LoadKind.WIND) * loads.windLb() / 2;
  }

  double downLb() {
    double ownLb = ownLbPerIn * loads.lengthIn();
    return combination.factor(LoadKind.DEAD) * ownLb / 2
        + combination.factor(LoadKind.VINES) * loads.vinesLb() / 2
        + combination.factor(LoadKind.ROOF_LIVE) * loads.personLb();
  }

  FormulaLine push() {
    return FormulaLine.of("push", Measure.pounds(sideLb()))
        .with("wind-factor", Measure.ratio(combination.factor(LoadKind.WIND)))
        .with("wind", Measure.pounds(loads.windLb()));
  }

  FormulaLine weight() {
    FormulaLine line =
        FormulaLine.of("weight", Measure.pounds(downLb()))
            .with("dead-factor", Measure.ratio(combination.factor(LoadKind.DEAD)))
            .with("own", new Measure(ownLbPerIn, Unit.POUND_PER_INCH))
            .with("length", Measure.inches(loads.lengthIn()))
            .with("vine-factor", Measure.ratio(combination.factor(LoadKind.VINES)))
            .with("vines", Measure.pounds(loads.vinesLb()));
    double live = combination.factor(LoadKind.ROOF_LIVE);
    return live > 0
        ? line.with("live-factor", Measure.ratio(live))
            .with("person", Measure.pounds(loads.personLb()))
        : line;
  }
}

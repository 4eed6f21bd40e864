package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * What the wind does to one crossbeam at one header: it lifts at a corner of the top, and pushes on
 * the face.
 *
 * @param combination with its factors of wind and of weight
 * @param liftedLb by the wind, strength level
 * @param deadLb its own weight on that header
 * @param windLb on its face, strength level, on both headers together
 */
record CrossbeamForce(LoadCombination combination, double liftedLb, double deadLb, double windLb)
    implements Calculated {

  static CrossbeamForce lifting(HeaderLoad each, double windOnCrossbeamLb) {
    return new CrossbeamForce(
        LoadCombination.UPLIFT, each.jointUpLb(), each.deadLb(), windOnCrossbeamLb);
  }

  JointForce onJoint() {
    return JointForce.of(combination, upLb(), sideLb()).as(this);
  }

  private double upLb() {
    return windFactor() * liftedLb - combination.factor(LoadKind.DEAD) * deadLb;
  }

  private double sideLb() {
    return windFactor() * windLb / 2;
  }

  private double windFactor() {
    return combination.factor(LoadKind.WIND);
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    boolean lifts = upLb() > 0;
    lines.add(
        FormulaLine.of(lifts ? "lift" : "rest", Measure.pounds(Math.abs(upLb())))
            .with("wind-factor", Measure.ratio(windFactor()))
            .with("up", Measure.pounds(liftedLb))
            .with("dead-factor", Measure.ratio(combination.factor(LoadKind.DEAD)))
            .with("dead", Measure.pounds(deadLb)));
    lines.add(
        FormulaLine.of("push", Measure.pounds(sideLb()))
            .with("wind-factor", Measure.ratio(windFactor()))
            .with("wind", Measure.pounds(windLb)));
    return lines;
  }
}

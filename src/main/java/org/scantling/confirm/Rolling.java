package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * A crossbeam that a force would roll over on its header.
 *
 * @param armIn of the push over the seat
 * @param hold what the fasteners hold that keep it upright
 * @param fasteners in the crossbeam, about its lee edge; none where blocks hold it
 * @param leverIn of the screws of a block, where blocks hold it
 */
record Rolling(
    JointForce force,
    double armIn,
    double breadthIn,
    JointHold hold,
    Optional<RollHold> fasteners,
    double leverIn) {

  /** Its fasteners hold lift and side push too: the three shares are added. */
  Check check() {
    return fasteners
        .map(
            held -> {
              double heldInLb = held.momentInLb();
              return new Check(rollInLb() + otherShare() * heldInLb, heldInLb);
            })
        .orElseGet(() -> new Check(rollInLb(), hold.pullLb() * leverIn));
  }

  private double rollInLb() {
    double restingInLb = force.downLb() * breadthIn / 2;
    return Math.max(0, force.sideLb() * armIn - restingInLb);
  }

  private double otherShare() {
    return force.liftLb() / hold.pullLb() + force.sideLb() / hold.sideLb();
  }

  List<JointLines> told() {
    List<JointLines> parts = new ArrayList<>();
    parts.add(JointLines.of(force.lines()));
    if (rollInLb() > 0) {
      parts.add(JointLines.of(roll()));
    }
    if (fasteners.isPresent()) {
      parts.addAll(hold.toldBoth());
      parts.add(JointLines.of(fasteners.get().lines()));
      parts.add(JointLines.of(together(fasteners.get().momentInLb())));
    } else {
      parts.addAll(hold.toldPull());
      parts.add(
          JointLines.of(
              FormulaLine.of("block-held", Measure.inchPounds(check().capacity()))
                  .with("pull-holds", Measure.pounds(hold.pullLb()))
                  .with("lever", Measure.inches(leverIn))));
    }
    return parts;
  }

  private FormulaLine roll() {
    return FormulaLine.of("roll", Measure.inchPounds(rollInLb()))
        .with("push", Measure.pounds(force.sideLb()))
        .with("arm", Measure.inches(armIn))
        .with("rest", Measure.pounds(force.downLb()))
        .with("breadth", Measure.inches(breadthIn));
  }

  private List<FormulaLine> together(double heldInLb) {
    return List.of(
        FormulaLine.of("roll-share", Measure.ratio(otherShare()))
            .with("lift", Measure.pounds(force.liftLb()))
            .with("pull-holds", Measure.pounds(hold.pullLb()))
            .with("push", Measure.pounds(force.sideLb()))
            .with("side-holds", Measure.pounds(hold.sideLb())),
        FormulaLine.of("roll-sum", Measure.inchPounds(check().demand()))
            .with("roll", Measure.inchPounds(rollInLb()))
            .with("others", Measure.ratio(otherShare()))
            .with("held", Measure.inchPounds(heldInLb)));
  }
}

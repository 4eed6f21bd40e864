package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * A joint under one force: what is checked of it, and how that was worked.
 *
 * @param id of the check
 * @param told from the fastener to what the joint holds; made when it is asked for
 */
public record JointCase(
    String id, LoadCombination combination, Check check, Supplier<List<JointLines>> told) {

  /** The name of the check, without its role. */
  String name() {
    return id.substring(id.indexOf('.') + 1);
  }

  /** How the joint was worked, and in the end how far it is used up. */
  public List<JointLines> parts() {
    List<JointLines> parts = new ArrayList<>(told.get());
    boolean turned = id.equals(CrossbeamRoll.CHECK);
    parts.add(
        JointLines.of(
            FormulaLine.of("used", Measure.ratio(check.ratio()))
                .with("asked", force(check.demand(), turned))
                .with("holds", force(check.capacity(), turned))));
    return parts;
  }

  private static Measure force(double amount, boolean turned) {
    return turned ? Measure.inchPounds(amount) : Measure.pounds(amount);
  }
}

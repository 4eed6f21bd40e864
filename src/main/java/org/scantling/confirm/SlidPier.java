package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.ground.ConcreteWeight;
import org.scantling.ground.Sliding;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * A pier that a bracket pushes sideways, and what holds it.
 *
 * @param push what pushes it and what stands on it at the same time
 * @param concrete weight of the pier
 * @param pressedLb what presses on the soil, negative where the pier is lifted
 * @param sliding push and hold
 */
public record SlidPier(
    PierSliding.Push push, ConcreteWeight concrete, double pressedLb, Sliding sliding)
    implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(concrete.lines());
    lines.add(
        FormulaLine.of("pressed", Measure.pounds(pressedLb))
            .with("solved", Measure.pounds(push.downLb()))
            .with("factor", Measure.ratio(push.combination().factor(LoadKind.DEAD)))
            .with("concrete", Measure.pounds(concrete.weightLb())));
    lines.addAll(sliding.lines());
    return lines;
  }
}

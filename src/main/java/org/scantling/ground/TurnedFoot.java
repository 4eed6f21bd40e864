package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * How far a point of a post moves because its foot turns; {@link TurningFoot#turned} finds it.
 *
 * @param foot push, depth and soil
 * @param turnsAtIn depth of the point about which the foot turns, in
 * @param turnRatio how far it turns, a small angle
 * @param aboveGroundIn height of the point of the post, in
 * @param movementIn how far that moves, in
 */
public record TurnedFoot(
    TurningFoot foot, double turnsAtIn, double turnRatio, double aboveGroundIn, double movementIn)
    implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    Measure depth = Measure.inches(foot.depthIn());
    Measure height = Measure.inches(foot.push().heightIn());
    return List.of(
        FormulaLine.of("turns-at", Measure.inches(turnsAtIn))
            .with("depth", depth)
            .with("push-height", height),
        FormulaLine.of("turn", Measure.ratio(turnRatio))
            .with("push", Measure.pounds(foot.push().forceLb()))
            .with("push-height", height)
            .with("depth", depth)
            .with("stiffening", new Measure(foot.stiffeningLbPerIn3(), Unit.POUND_PER_CUBIC_INCH)),
        FormulaLine.of("turned", Measure.inches(movementIn))
            .with("turn", Measure.ratio(turnRatio))
            .with("turns-at", Measure.inches(turnsAtIn))
            .with("height", Measure.inches(aboveGroundIn)));
  }
}

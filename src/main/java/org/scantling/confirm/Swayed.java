package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.ground.TurnedFoot;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * How far the top of a post sways, bending and turning together.
 *
 * @param sway of the post by itself
 * @param foot how its foot turns under the same push
 * @param swayIn both
 */
public record Swayed(PostSway sway, TurnedFoot foot, double swayIn) implements Calculated {
  static Swayed of(PostSway sway, TurnedFoot foot) {
    return new Swayed(sway, foot, sway.leaningIn() + foot.movementIn());
  }

  @Override
  public List<FormulaLine> lines() {
    SidePush push = sway.push();
    Measure top = Measure.pounds(push.topLb());
    Measure spread = Measure.pounds(push.spreadLb());
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(
        FormulaLine.of("push", Measure.pounds(foot.foot().push().forceLb()))
            .with("factor", Measure.ratio(sway.windFactor()))
            .with("top", top)
            .with("spread", spread));
    lines.add(
        FormulaLine.of("height", Measure.inches(foot.foot().push().heightIn()))
            .with("moment", new Measure(push.momentAtInLb(0), Unit.INCH_POUND))
            .with("top", top)
            .with("spread", spread));
    lines.addAll(foot.lines());
    lines.add(
        FormulaLine.of("sway", Measure.inches(swayIn))
            .with("solved", Measure.inches(sway.leaningIn()))
            .with("turned", Measure.inches(foot.movementIn())));
    return lines;
  }
}

package org.scantling.tables;

import java.util.OptionalDouble;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Inches;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/**
 * What holds one kind of joint; the rows of a joint stand in order of effort, the least first.
 *
 * @param question the joint
 * @param style the header style it belongs to, or any
 * @param fasteners in words
 * @param usual what the trade takes unless a check asks for more
 * @param way bolted, lagged, toe-nailed, toe-screwed, rated (steel parts) or housed
 * @param fastener row of fasteners.csv, empty for steel parts
 * @param count fasteners at one joint
 * @param threadIn thread that grips, the tip left out
 * @param tipIn tapered end of a screw
 * @param ratedLiftLb what the maker of steel parts vouches for against lift, in wind
 * @param ratedSideLb the same sideways
 * @param ratedDownLb the same for a load that hangs in them or stands on them
 * @param ratedMomentLbFt the same against being bent over, in wind
 * @param ratedTurnRatio how far they turn at most under that moment, in over in
 */
public record JointRow(
    String id,
    Question question,
    String style,
    String fasteners,
    boolean usual,
    String way,
    String fastener,
    int count,
    OptionalDouble threadIn,
    OptionalDouble tipIn,
    OptionalDouble ratedLiftLb,
    OptionalDouble ratedSideLb,
    OptionalDouble ratedDownLb,
    OptionalDouble ratedMomentLbFt,
    OptionalDouble ratedTurnRatio,
    Source source,
    String note)
    implements TableRow {
  static JointRow read(Row row) {
    return new JointRow(
        row.text("id"),
        Question.of(
            row.oneOf(
                "question",
                "joint.crossbeam",
                "joint.header",
                "joint.rail",
                "joint.brace",
                "joint.step",
                "joint.base")),
        row.oneOf("style", "any", WayOfBuilding.ON_TOP, WayOfBuilding.PAIRED),
        row.text("fasteners"),
        row.yes("usual"),
        row.oneOf("way", "bolted", "lagged", "toe-nailed", "toe-screwed", "rated", "housed"),
        row.optional("fastener"),
        (int) row.positive("count"),
        row.optionalNumber("thread_in"),
        row.optionalNumber("tip_in"),
        row.optionalNumber("rated_lift_lb"),
        row.optionalNumber("rated_side_lb"),
        row.optionalNumber("rated_down_lb"),
        row.optionalNumber("rated_moment_lb_ft"),
        row.optionalNumber("rated_turn_ratio"),
        row.source(),
        row.optional("note"));
  }

  /**
   * How hard it is to turn, in-lb over in per in: its moment over how far that turns it. Endless
   * for parts of which no turning is spoken.
   */
  public double turningInLb() {
    return ratedTurnRatio.isPresent()
        ? ratedMomentInLb() / ratedTurnRatio.getAsDouble()
        : Double.POSITIVE_INFINITY;
  }

  /** The moment that its maker vouches for, in in-lb; 0 for none. */
  public double ratedMomentInLb() {
    return ratedMomentLbFt.orElse(0) * Inches.PER_FOOT;
  }

  /** True where it goes with headers of that style. */
  public boolean fits(String headerStyle) {
    return style.equals("any") || style.equals(headerStyle);
  }
}

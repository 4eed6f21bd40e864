package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What the wind does to one post in one direction, strength level.
 *
 * @param topLb on the header and the crossbeams
 * @param topAtIn height above ground at which that push acts, above or below the top of the post
 * @param spreadLb on the post, its sides and their leaves, spread evenly over the height
 * @param heightIn ground to top of the post
 */
public record SidePush(double topLb, double topAtIn, double spreadLb, double heightIn)
    implements Calculated {

  /** A push that acts right at the top of the post. */
  public SidePush(double topLb, double spreadLb, double heightIn) {
    this(topLb, heightIn, spreadLb, heightIn);
  }

  public double forceLb() {
    return topLb + spreadLb;
  }

  /** Moment at a height above ground, in inch-pounds. */
  public double momentAtInLb(double aboveGroundIn) {
    double armIn = heightIn - aboveGroundIn;
    return topLb * Math.max(0, topAtIn - aboveGroundIn) + spreadLb * armIn * armIn / (2 * heightIn);
  }

  /** Height of the resultant above ground. */
  public double resultantIn() {
    return forceLb() > 0 ? momentAtInLb(0) / forceLb() : heightIn / 2;
  }

  /**
   * Sway of the top of a post held by the ground, for EI in lb-in²: of the push as if it were at
   * the top of the post, of the moment by which it is higher or lower, and of the rest.
   */
  double swayIn(double stiffnessLbIn2) {
    double square = heightIn * heightIn;
    double cube = square * heightIn;
    return (topLb * cube / 3 + topLb * (topAtIn - heightIn) * square / 2 + spreadLb * cube / 8)
        / stiffnessLbIn2;
  }

  /**
   * How far the top moves because the base under the post turns.
   *
   * @param turningInLb moment that would turn it by one; endless where it does not turn
   */
  double turnedIn(double turningInLb) {
    return momentAtInLb(0) / turningInLb * heightIn;
  }

  /** Its moment at the ground. */
  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("moment", new Measure(momentAtInLb(0), Unit.INCH_POUND))
            .with("top", Measure.pounds(topLb))
            .with("at", Measure.inches(topAtIn))
            .with("spread", Measure.pounds(spreadLb))
            .with("height", Measure.inches(heightIn)));
  }
}

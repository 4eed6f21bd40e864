package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * Concrete around or under the foot of a post.
 *
 * <p>Only concrete that is fastened to the post (bolt or lugs through it) can hold it down: for a
 * smooth post in loose concrete, or in tamped fill alone, give {@link #none}.
 *
 * @param embedmentIn from the ground to the footing's bottom, in, above zero
 * @param collarDiameterIn diameter of the collar or bell at the bottom, in, zero or more
 * @param collarThicknessIn height of the collar or bell, in, not over the embedment
 * @param shaftDiameterIn diameter of the concrete above the collar, in; zero where soil is filled
 *     back against the post
 * @param postBreadthIn of the buried post, which is square, in; zero where it stands on a bracket
 */
public record BuriedFooting(
    double embedmentIn,
    double collarDiameterIn,
    double collarThicknessIn,
    double shaftDiameterIn,
    double postBreadthIn) {
  public BuriedFooting {
    Require.positive("embedment", embedmentIn, "in");
    Require.zeroOrMore("collar diameter", collarDiameterIn, "in");
    Require.zeroOrMore("collar thickness", collarThicknessIn, "in");
    Require.atMost("collar thickness", collarThicknessIn, "in", "embedment", embedmentIn);
    Require.zeroOrMore("shaft diameter", shaftDiameterIn, "in");
    Require.atMost("shaft diameter", shaftDiameterIn, "in", "collar diameter", collarDiameterIn);
    Require.zeroOrMore("post breadth", postBreadthIn, "in");
  }

  /** A post in tamped fill, or in concrete that is not fastened to it. */
  public static BuriedFooting none(double embedmentIn, double postBreadthIn) {
    return new BuriedFooting(embedmentIn, 0, 0, 0, postBreadthIn);
  }

  /** A collar of one diameter from the hole's bottom to the ground. */
  public static BuriedFooting fullCollar(
      double embedmentIn, double diameterIn, double postBreadthIn) {
    return new BuriedFooting(embedmentIn, diameterIn, embedmentIn, diameterIn, postBreadthIn);
  }

  /** Volume of the concrete, cu in. */
  public double concreteIn3() {
    return beyondPostIn2(collarDiameterIn) * collarThicknessIn
        + beyondPostIn2(shaftDiameterIn) * (embedmentIn - collarThicknessIn);
  }

  /** Volume of the upright soil cylinder that stands on the collar, cu in. */
  public double soilIn3() {
    double ringIn2 = beyondPostIn2(collarDiameterIn) - beyondPostIn2(shaftDiameterIn);
    return ringIn2 * (embedmentIn - collarThicknessIn);
  }

  private double beyondPostIn2(double diameterIn) {
    return Math.max(0, VerticalBearing.circleIn2(diameterIn) - postBreadthIn * postBreadthIn);
  }
}

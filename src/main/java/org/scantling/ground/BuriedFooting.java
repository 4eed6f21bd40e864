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
 * @param postIn2 cross section of the buried post, sq in; zero where it stands on a bracket
 */
public record BuriedFooting(
    double embedmentIn,
    double collarDiameterIn,
    double collarThicknessIn,
    double shaftDiameterIn,
    double postIn2) {
  public BuriedFooting {
    Require.positive("embedment", embedmentIn, "in");
    Require.zeroOrMore("collar diameter", collarDiameterIn, "in");
    Require.zeroOrMore("collar thickness", collarThicknessIn, "in");
    Require.atMost("collar thickness", collarThicknessIn, "in", "embedment", embedmentIn);
    Require.zeroOrMore("shaft diameter", shaftDiameterIn, "in");
    Require.atMost("shaft diameter", shaftDiameterIn, "in", "collar diameter", collarDiameterIn);
    Require.zeroOrMore("post cross section", postIn2, "in²");
  }

  /** A post in tamped fill, or in concrete that is not fastened to it. */
  public static BuriedFooting none(double embedmentIn, double postIn2) {
    return new BuriedFooting(embedmentIn, 0, 0, 0, postIn2);
  }

  /** A collar of one diameter from the hole's bottom to the ground. */
  public static BuriedFooting fullCollar(double embedmentIn, double diameterIn, double postIn2) {
    return new BuriedFooting(embedmentIn, diameterIn, embedmentIn, diameterIn, postIn2);
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
    return Math.max(0, VerticalBearing.circleIn2(diameterIn) - postIn2);
  }
}

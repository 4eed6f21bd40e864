package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * A sawn section as the load sees it, in dressed inches.
 *
 * @param breadthIn across the load, above 0
 * @param depthIn along the load, above 0
 */
public record Rectangle(double breadthIn, double depthIn) {
  public Rectangle {
    Require.positive("breadth", breadthIn, "in");
    Require.positive("depth", depthIn, "in");
  }

  /** Area in square inches. */
  public double areaIn2() {
    return breadthIn * depthIn;
  }

  /** Section modulus in cubic inches. Worked: 1.5 × 5.5 in gives 7.5625 in³. */
  public double sectionModulusIn3() {
    return breadthIn * depthIn * depthIn / 6;
  }

  /** Second moment of area in in⁴. Worked: 1.5 × 5.5 in gives 20.80 in⁴. */
  public double secondMomentIn4() {
    return breadthIn * depthIn * depthIn * depthIn / 12;
  }

  /** The same piece loaded on its other face. */
  public Rectangle turned() {
    return new Rectangle(/* breadthIn= */ depthIn, /* depthIn= */ breadthIn);
  }

  /**
   * The net section where a notch or hole takes that much of the depth, right across the breadth.
   *
   * @param notchDepthIn from 0 to less than the depth
   * @return the section that is left
   */
  public Rectangle notched(double notchDepthIn) {
    Require.zeroOrMore("notch depth", notchDepthIn, "in");
    Require.below("notch depth", notchDepthIn, "in", depthIn);
    return new Rectangle(breadthIn, depthIn - notchDepthIn);
  }
}

package org.scantling.mechanics;

import org.scantling.quantity.Require;

/**
 * What does a rectangular piece of timber, of one or more plies side by side, offer against
 * bending, shear and axial force?
 *
 * <p>Strong means bent on edge (load along the depth), weak means bent flatwise (load along the
 * breadth). On edge the plies share the load as one piece; flatwise each ply bends by itself, since
 * nails do not make one thick board of two thin ones.
 *
 * <p>Source: closed form, any strength-of-materials text, e.g. Gere, Mechanics of Materials,
 * properties of plane areas. Plies bending separately when flatwise: common practice, cautious.
 *
 * <p>Worked number: a 2x8 (1.5 × 7.25): area 10.875 in², strong section modulus 13.14 in³, strong
 * second moment 47.63 in⁴.
 *
 * @param breadthIn dressed breadth of one ply, in, above zero
 * @param depthIn dressed depth, in, above zero
 * @param plyCount plies side by side, 1 or more
 */
public record Section(double breadthIn, double depthIn, int plyCount) {
  public Section {
    Require.positive("section breadth", breadthIn, "in");
    Require.positive("section depth", depthIn, "in");
    if (plyCount < 1) {
      throw new IllegalArgumentException("ply count " + plyCount + " must be 1 or more");
    }
  }

  /** One solid piece. */
  public static Section solid(double breadthIn, double depthIn) {
    return new Section(breadthIn, depthIn, 1);
  }

  /** Breadth of all plies together, in. */
  public double widthIn() {
    return breadthIn * plyCount;
  }

  /** Cross-section, in². */
  public double areaIn2() {
    return widthIn() * depthIn;
  }

  /** Section modulus when bent on edge, in³. */
  public double strongModulusIn3() {
    return widthIn() * depthIn * depthIn / 6;
  }

  /** Second moment of area when bent on edge, in⁴. */
  public double strongSecondMomentIn4() {
    return strongModulusIn3() * depthIn / 2;
  }

  /** Section modulus when bent flatwise, each ply by itself, in³. */
  public double weakModulusIn3() {
    return plyCount * depthIn * breadthIn * breadthIn / 6;
  }

  /** Second moment of area when bent flatwise, each ply by itself, in⁴. */
  public double weakSecondMomentIn4() {
    return weakModulusIn3() * breadthIn / 2;
  }

  /**
   * What is left at a notch, as a section of its own.
   *
   * @param notchIn depth cut away, in, zero or more and less than the depth
   */
  public Section notched(double notchIn) {
    if (!(notchIn >= 0 && notchIn < depthIn)) {
      throw new IllegalArgumentException(
          "notch depth " + notchIn + " in must leave wood of the " + depthIn + " in section");
    }
    return new Section(breadthIn, depthIn - notchIn, plyCount);
  }
}

package org.scantling.timber;

import org.scantling.quantity.Check;

/**
 * How hard a piece is worked by a pull and bending together, as a post that wind lifts and bends.
 *
 * @param tensionEdgeRatio ft/Ft' + fb/Fb*
 * @param compressionEdgeRatio (fb − ft)/Fb**, 0 where the pull takes all pressing away
 */
public record BendingWithTension(double tensionEdgeRatio, double compressionEdgeRatio) {

  /**
   * A pull and bending against the interaction limits of both edges.
   *
   * @param pull ft and Ft'
   * @param bending fb and Fb', with C_L among its factors where it has one
   * @return the ratio at both edges
   *     <p>Source: NDS, 2018, 3.9.1. Worked: ft 200 of 600 psi and fb 500 of 1000 psi gives 0.833.
   */
  public static BendingWithTension of(AxialStress pull, Bending bending) {
    double starPsi = bending.allowable().without("C_L").psi();
    double tension = pull.stressPsi() / pull.allowable().psi() + bending.stressPsi() / starPsi;
    double pressedPsi = Math.max(0, bending.stressPsi() - pull.stressPsi());
    return new BendingWithTension(tension, pressedPsi / bending.allowable().psi());
  }

  /** The worse edge against 1. */
  public Check check() {
    return new Check(Math.max(tensionEdgeRatio, compressionEdgeRatio), 1);
  }
}

package org.scantling.mechanics;

import org.scantling.quantity.Require;

/**
 * How stiff a frame member is.
 *
 * <p>Tabulated moduli of sawn lumber are measured on beams and already hold the sag from shear of a
 * beam some 21 times as long as deep, so timber members usually leave shear out (infinite):
 * counting it again would double it.
 *
 * <p>Source: ASTM D245 and D198, apparent modulus of elasticity (from memory).
 *
 * @param axialLb E·A, lb, above zero
 * @param bendingLbIn2 E·I about the axis across the plane of the frame, lb·in², above zero
 * @param shearLb shear area × G, lb, above zero; infinite leaves shear deformation out
 */
public record MemberStiffness(double axialLb, double bendingLbIn2, double shearLb) {
  public MemberStiffness {
    Require.positive("axial stiffness", axialLb, "lb");
    Require.positive("bending stiffness", bendingLbIn2, "lb·in²");
    if (!(shearLb > 0)) {
      throw new IllegalArgumentException("shear stiffness " + shearLb + " must be above zero");
    }
  }

  /** A section bent on edge, without shear deformation. */
  public static MemberStiffness onEdge(Section section, double modulusPsi) {
    return slender(modulusPsi * section.areaIn2(), modulusPsi * section.strongSecondMomentIn4());
  }

  /** A section bent flatwise, without shear deformation. */
  public static MemberStiffness flatwise(Section section, double modulusPsi) {
    return slender(modulusPsi * section.areaIn2(), modulusPsi * section.weakSecondMomentIn4());
  }

  /** From E·A and E·I, without shear deformation. */
  public static MemberStiffness slender(double axialLb, double bendingLbIn2) {
    return new MemberStiffness(axialLb, bendingLbIn2, Double.POSITIVE_INFINITY);
  }

  double shearFlexibilityIn2() {
    return bendingLbIn2 / shearLb;
  }
}

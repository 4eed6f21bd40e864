package org.scantling.confirm;

/** What is asked of a beam in one check. */
public enum BeamAsk {
  /** Bending that pulls its underside. */
  SAGGING("bending"),
  /** Bending that pulls its top over a support. */
  HOGGING("seat-bending"),
  /** Shear in the whole section. */
  SHEAR("shear"),
  /** Pressure on its seat. */
  SEAT("bearing"),
  /** Load on a post. */
  SUPPORT("support"),
  /** Lift off a post. */
  LIFT("lift"),
  /** Sag of a span in the end. */
  SPAN_SAG("deflection-total");

  private final String check;

  BeamAsk(String check) {
    this.check = check;
  }

  /** Name of the check, after that of the member. */
  public String check() {
    return check;
  }
}

package org.scantling.mechanics;

/**
 * What one member of a frame does under one load case or a combination, exact along its length.
 *
 * <p>Axial force: tension positive. Shear: positive where the part towards the start is pushed to
 * the member's left (its y). Moment: positive where it stretches the right side of the member, so
 * sagging for a member that runs from left to right. Places are inches from the member's start.
 */
public final class MemberResult {
  private final LineCurve curve;
  private final AxialCurve axial;
  private final double[] endForces;
  private final double bendingLbIn2;

  MemberResult(LineCurve curve, AxialCurve axial, double[] endForces, double bendingLbIn2) {
    this.curve = curve;
    this.axial = axial;
    this.endForces = endForces;
    this.bendingLbIn2 = bendingLbIn2;
  }

  MemberResult blank() {
    return new MemberResult(curve.blank(), axial.blank(), new double[6], bendingLbIn2);
  }

  void add(MemberResult other, double factor) {
    curve.add(other.curve, factor);
    axial.add(other.axial, factor);
    for (int i = 0; i < endForces.length; i++) {
      endForces[i] += factor * other.endForces[i];
    }
  }

  /** A fresh copy of the six end forces, in the member's axes, as the nodes act on the member. */
  double[] endForceArray() {
    return endForces.clone();
  }

  /** The forces on the member's two ends, in its own axes. */
  public MemberEndForces endForces() {
    return new MemberEndForces(
        endForces[0], endForces[1], endForces[2], endForces[3], endForces[4], endForces[5]);
  }

  public double lengthIn() {
    return curve.stations().lengthIn();
  }

  /** Axial force, lb, tension positive; where it jumps, the value beyond the jump. */
  public double axialLb(double atIn) {
    return axial.at(onMember(atIn));
  }

  /** Shear, lb; where it jumps, the value beyond the jump. */
  public double shearLb(double atIn) {
    return curve.stateAt(onMember(atIn)).shear;
  }

  /** Moment, in·lb. */
  public double momentInLb(double atIn) {
    return curve.stateAt(onMember(atIn)).moment;
  }

  /** Movement across the member, to its left, in, the movement of its ends included. */
  public double movementIn(double atIn) {
    return -curve.stateAt(onMember(atIn)).deflection / bendingLbIn2;
  }

  /** Sag from the straight line between the member's moved ends, in, to its right positive. */
  public double sagIn(double atIn) {
    double share = onMember(atIn) / lengthIn();
    double chord = (1 - share) * movementIn(0) + share * movementIn(lengthIn());
    return chord - movementIn(atIn);
  }

  private double onMember(double atIn) {
    if (!(atIn >= 0 && atIn <= lengthIn())) {
      throw new IllegalArgumentException(
          "place " + atIn + " in must be on the member, 0 to " + lengthIn() + " in");
    }
    return atIn;
  }

  /** Largest moment of either sign, in·lb, with its sign. */
  public Peak largestMoment() {
    int last = curve.stations().last();
    Peak hogging = curve.mostHogging(0, last);
    return curve.mostSagging(0, last).orLarger(hogging.atIn(), hogging.amount());
  }

  /** Largest shear, lb, with its sign. */
  public Peak largestShear() {
    return curve.largestShear(0, curve.stations().last());
  }

  /** Largest movement across the member, in, to its left positive, with its sign. */
  public Peak largestMovement() {
    Peak scaled = curve.largestDeflection(0, curve.stations().last());
    return new Peak(scaled.atIn(), -scaled.amount() / bendingLbIn2);
  }

  /** Largest tension, lb; 0 if there is none. */
  public Peak mostTension() {
    return axial.mostTension();
  }

  /** Largest compression, lb, negative; 0 if there is none. */
  public Peak mostCompression() {
    return axial.mostCompression();
  }

  /** Places kept for drawing, inches from the member's start. */
  public double[] stationsIn() {
    return curve.stations().toArray();
  }

  /** Moment at each station, in·lb. */
  public double[] momentsInLb() {
    return curve.moments();
  }
}

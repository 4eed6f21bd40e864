package org.scantling.mechanics;

import java.util.List;

/**
 * What presses on each support of a beam, lb: the beam on its left, the beam on its right, and what
 * stands right over it. Supports count from 0; negative is uplift.
 *
 * <p>Where two pieces of a beam meet, left and right are the ends of two timbers.
 *
 * <p>Worked number: supports at 0, 100 and 200 in, 10 lb/in throughout, a load of 50 lb right over
 * the middle one: 625 lb from the left, 625 lb from the right, 50 lb over it, 1300 lb in all.
 */
public final class SupportForces {
  private final double[] leftLb;
  private final double[] rightLb;
  private final double[] overLb;

  private SupportForces(double[] leftLb, double[] rightLb, double[] overLb) {
    this.leftLb = leftLb;
    this.rightLb = rightLb;
    this.overLb = overLb;
  }

  static SupportForces of(LineCurve curve, int[] supports, double[] overLb) {
    double[] before = curve.shearsBefore();
    double[] after = curve.shearsAfter();
    SupportForces forces = none(supports.length);
    for (int i = 0; i < supports.length; i++) {
      forces.leftLb[i] = -before[supports[i]];
      forces.rightLb[i] = after[supports[i]];
      forces.overLb[i] = overLb[i];
    }
    return forces;
  }

  static SupportForces none(int supportCount) {
    return new SupportForces(
        new double[supportCount], new double[supportCount], new double[supportCount]);
  }

  static SupportForces combine(List<BeamResult> cases, double... factors) {
    SupportForces sum = none(cases.get(0).onSupports().supportCount());
    for (int i = 0; i < factors.length; i++) {
      sum.add(cases.get(i).onSupports(), factors[i]);
    }
    return sum;
  }

  public int supportCount() {
    return overLb.length;
  }

  private void add(SupportForces other, double factor) {
    for (int i = 0; i < overLb.length; i++) {
      leftLb[i] += factor * other.leftLb[i];
      rightLb[i] += factor * other.rightLb[i];
      overLb[i] += factor * other.overLb[i];
    }
  }

  /** What the span or the tail on its left presses on a support. */
  public double leftLb(int support) {
    return leftLb[support];
  }

  /** What the span or the tail on its right presses on a support. */
  public double rightLb(int support) {
    return rightLb[support];
  }

  /** What stands right over a support, which the beam does not feel. */
  public double overLb(int support) {
    return overLb[support];
  }

  /** All that a support carries. */
  public double totalLb(int support) {
    return leftLb[support] + rightLb[support] + overLb[support];
  }
}

package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * How hard an embedded post is bent and sheared below the ground by a sideways push above it.
 *
 * <p>The post turns as a stiff piece about a point deep down; the soil pushes back above that point
 * and the other way below, the harder the deeper, so that the bending still grows a little below
 * grade and the shear in the ground is often more than the push itself.
 *
 * @param push P and h
 * @param depthIn d, embedment, in, above zero
 */
public record EmbeddedPost(LateralLoad push, double depthIn) {
  private static final int MOST_STEPS = 50;

  public EmbeddedPost {
    Require.positive("embedment", depthIn, "in");
  }

  /**
   * Finds the shear in the post below the ground.
   *
   * @param belowIn depth below the ground, in, from 0 to the embedment
   * @return V = P − r₁z²/2 + r₂z³/3, lb; minus where the soil has more than taken the push
   *     <p>Source: statics of a stiff pole in soil whose resistance grows with depth and with the
   *     pole's movement, the model of Czerniak, Resistance to Overturning of Single, Short Piles,
   *     ASCE Journal of the Structural Division, 1957 (from memory)
   *     <p>Worked number: 150 lb at 60 in on a post 48 in deep: −431 lb at 33.4 in.
   */
  public double shearLb(double belowIn) {
    double z = inGround(belowIn);
    return push.forceLb() - firstRate() * z * z / 2 + secondRate() * z * z * z / 3;
  }

  /**
   * Finds the bending moment in the post below the ground.
   *
   * @param belowIn depth below the ground, in, from 0 to the embedment
   * @return M = P(h + z) − r₁z³/6 + r₂z⁴/12, lb-in
   *     <p>Source: as {@link #shearLb}
   *     <p>Worked number: 150 lb at 60 in on a post 48 in deep: 10 071 lb-in at 11.1 in, 12 percent
   *     more than at the ground.
   */
  public double momentInLb(double belowIn) {
    double z = inGround(belowIn);
    double soil = firstRate() * z * z * z / 6 - secondRate() * z * z * z * z / 12;
    return push.forceLb() * (push.heightIn() + z) - soil;
  }

  /** Depth about which the post turns, where the soil pushes neither way, in. */
  public double turnsAtIn() {
    double h = push.heightIn();
    return depthIn * (4 * h + 3 * depthIn) / (2 * (3 * h + 2 * depthIn));
  }

  /**
   * Depth of the greatest bending, where the soil has taken the whole push, in. It does not depend
   * on how hard the push is.
   *
   * <p>Shear falls from P at the ground to its lowest where the post turns. Its curve bends one way
   * above half that depth and the other way below, so Newton's steps that start there come to its
   * root from one side.
   */
  public double mostBentAtIn() {
    double h = push.heightIn() / depthIn;
    double first = 12 * h + 9;
    double second = 12 * h + 8;
    double share = first / (3 * second);
    for (int i = 0; i < MOST_STEPS; i++) {
      double shear = 1 + share * share * (second * share - first);
      double next = share - shear / (share * (3 * second * share - 2 * first));
      if (Math.abs(next - share) <= Math.ulp(share)) {
        break;
      }
      share = next;
    }
    return share * depthIn;
  }

  /** The greatest bending moment of the post, lb-in; it lies below the ground. */
  public double greatestMomentInLb() {
    return momentInLb(mostBentAtIn());
  }

  /** The greatest shear of the post, above or below the ground, lb. */
  public double greatestShearLb() {
    return Math.max(push.forceLb(), -shearLb(turnsAtIn()));
  }

  /** Soil reaction on the post grows as r₁z − r₂z², lb/in: both follow from P, h and d alone. */
  private double firstRate() {
    return 6 * push.forceLb() * (4 * push.heightIn() + 3 * depthIn) / Math.pow(depthIn, 3);
  }

  private double secondRate() {
    return 12 * push.forceLb() * (3 * push.heightIn() + 2 * depthIn) / Math.pow(depthIn, 4);
  }

  private double inGround(double belowIn) {
    return Require.within("depth below the ground", belowIn, "in", 0, depthIn);
  }
}

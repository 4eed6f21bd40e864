package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * How far the foot of a post turns in the ground under a sideways push.
 *
 * <p>The foot is stiff and turns as one piece about a point deep down. The soil pushes back by how
 * far it is moved, and its stiffness grows with the depth: a strip of it resists with n_h·z·y, lb
 * for each inch of depth, however wide the foot.
 *
 * @param push P and h
 * @param depthIn d, embedment, in, above zero
 * @param stiffeningLbPerIn3 n_h, how fast the soil stiffens with the depth, lb/in³, above zero
 */
public record TurningFoot(LateralLoad push, double depthIn, double stiffeningLbPerIn3) {
  private static final double DEEPEST_TRIAL_IN = 1200;
  private static final int HALVINGS = 60;

  public TurningFoot {
    Require.positive("embedment", depthIn, "in");
    Require.positive("growth of the soil's stiffness", stiffeningLbPerIn3, "lb/in3");
  }

  /**
   * Depth of the point about which the foot turns.
   *
   * @return z₀ = d(3d + 4h)/(4d + 6h), in
   *     <p>Source: statics of a stiff pole in soil whose stiffness grows with the depth, as {@link
   *     EmbeddedPost}
   *     <p>Worked number: 77.43 lb at 48.63 in on a foot 36 in deep: 24.99 in.
   */
  public double turnsAtIn() {
    return new EmbeddedPost(push, depthIn).turnsAtIn();
  }

  /**
   * How far the foot turns.
   *
   * @return θ = P / [n_h (z₀d²/2 − d³/3)] = 12 P (3h + 2d) / (n_h d⁴), a small angle, in over in
   *     <p>Source: as {@link #turnsAtIn}; n_h by Terzaghi, Evaluation of Coefficients of Subgrade
   *     Reaction, Géotechnique, 1955 (from memory)
   *     <p>Worked number: 77.43 lb at 48.63 in, 36 in deep, 24 lb/in³: 0.00502.
   */
  public double turnRatio() {
    double fourth = Math.pow(depthIn, 4);
    return 12
        * push.forceLb()
        * (3 * push.heightIn() + 2 * depthIn)
        / (stiffeningLbPerIn3 * fourth);
  }

  /**
   * How far a point of the post moves because its foot turns.
   *
   * @param aboveGroundIn height of the point, in, zero or more
   * @return θ(z₀ + H), in, with both
   *     <p>Source: as {@link #turnsAtIn}
   *     <p>Worked number: 77.43 lb at 48.63 in, 36 in deep, 24 lb/in³: 0.125 in at the ground,
   *     0.537 in at 82 in above it.
   */
  public TurnedFoot turned(double aboveGroundIn) {
    double turnsAtIn = turnsAtIn();
    double turnRatio = turnRatio();
    double movementIn = turnRatio * (turnsAtIn + Require.zeroOrMore("height", aboveGroundIn, "in"));
    return new TurnedFoot(this, turnsAtIn, turnRatio, aboveGroundIn, movementIn);
  }

  /** The movement of {@link #turned} alone, in. */
  public double movementIn(double aboveGroundIn) {
    return turned(aboveGroundIn).movementIn();
  }

  /**
   * Finds the depth at which a point of the post moves no farther than that.
   *
   * @param mostIn greatest movement, in, above zero
   * @param aboveGroundIn height of the point, in
   * @return d, in; endless where no depth a hole can have does
   *     <p>Source: as {@link #turnsAtIn}; found by halving, since movement falls as depth grows
   *     <p>Worked number: 77.43 lb at 48.63 in, 24 lb/in³: no more than 0.537 in at 82 in from 36
   *     in of depth on.
   */
  public static double depthIn(
      LateralLoad push, double stiffeningLbPerIn3, double mostIn, double aboveGroundIn) {
    Require.positive("greatest movement", mostIn, "in");
    if (!(push.forceLb() > 0)) {
      return 0;
    }
    if (new TurningFoot(push, DEEPEST_TRIAL_IN, stiffeningLbPerIn3).movementIn(aboveGroundIn)
        > mostIn) {
      return Double.POSITIVE_INFINITY;
    }
    double shallowIn = 0;
    double deepIn = DEEPEST_TRIAL_IN;
    for (int i = 0; i < HALVINGS; i++) {
      double middleIn = (shallowIn + deepIn) / 2;
      if (new TurningFoot(push, middleIn, stiffeningLbPerIn3).movementIn(aboveGroundIn) > mostIn) {
        shallowIn = middleIn;
      } else {
        deepIn = middleIn;
      }
    }
    return deepIn;
  }
}

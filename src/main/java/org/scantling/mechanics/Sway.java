package org.scantling.mechanics;

import org.scantling.quantity.Require;

/**
 * By how much does vertical load make a sideways movement grow?
 *
 * <p>Posts that lean under wind carry their vertical load off the plumb line; that pushes them
 * further (P-Delta). First-order movements and the moments that come with them are multiplied by
 * {@code amplifierFactor}. Picked over a geometric-stiffness solution because it needs one drift
 * only, shows its working on a line, and errs on the safe side: for a cantilever up to half its
 * critical load it exceeds the exact beam-column solution by less than 1 percent for a load at the
 * top and 2.5 percent for wind spread over the height.
 *
 * <p>Do not use it together with the factor 1/(1 − fc/FcE) of NDS 2018 3.9.2 for the same movement:
 * for a cantilever post with the effective length of its sway that factor is this one.
 *
 * @param verticalLb vertical load on all posts that sway together, lb, zero or more
 * @param criticalLb vertical load at which they would sway without limit, lb, above zero
 */
public record Sway(double verticalLb, double criticalLb) {
  /**
   * A bent post gives way at π²/12 of the load that its straight-line sway stiffness would carry.
   */
  private static final double CURVATURE_RATIO = Math.PI * Math.PI / 12;

  public Sway {
    Require.zeroOrMore("vertical load", verticalLb, "lb");
    Require.positive("critical load", criticalLb, "lb");
  }

  /**
   * From a frame's or post's own first-order drift, springs at its feet included.
   *
   * <p>Critical load = (π²/12)·H·h/Δ: exact for cantilevers and for posts between stiff headers,
   * somewhat low (cautious) where much of the drift comes from the feet or the braces.
   *
   * <p>Source: stability coefficient θ = P·Δ/(V·h) and amplifier 1/(1 − θ), ASCE 7-16, 12.8.7;
   * factor π²/12 for the posts' own curvature: ratio of Euler load to sway stiffness, closed form,
   * e.g. Timoshenko and Gere, Theory of Elastic Stability.
   *
   * <p>Worked number: H 150 lb moves a 108 in post by 0.51624 in: critical load 25 810 lb; under
   * 8000 lb the amplifier is 1.449.
   *
   * @param verticalLb vertical load on all posts that sway together, lb, zero or more
   * @param sidewaysLb a sideways force at the tops of the posts, lb, above zero
   * @param driftIn first-order movement of the tops under that force alone, in, above zero
   * @param heightIn height of the tops over the feet, in, above zero
   */
  public static Sway ofDrift(
      double verticalLb, double sidewaysLb, double driftIn, double heightIn) {
    double stiffnessLbPerIn =
        Require.positive("sideways force", sidewaysLb, "lb")
            / Require.positive("drift", driftIn, "in");
    double criticalLb =
        CURVATURE_RATIO * stiffnessLbPerIn * Require.positive("height", heightIn, "in");
    return new Sway(verticalLb, criticalLb);
  }

  /**
   * Of a post held at its foot alone.
   *
   * <p>Source: Euler load π²EI/(Ke·L)², NDS 2018, 3.7.1 and Appendix G (Ke 2.1 recommended, 2.0 in
   * theory for a foot held perfectly).
   *
   * @param verticalLb load on its top, lb, zero or more
   * @param bendingLbIn2 E·I of the post, lb·in², above zero
   * @param effectiveLengthIn Ke × height, in, above zero
   */
  public static Sway ofCantilever(
      double verticalLb, double bendingLbIn2, double effectiveLengthIn) {
    double lengthIn = Require.positive("effective length", effectiveLengthIn, "in");
    double bending = Require.positive("bending stiffness", bendingLbIn2, "lb·in²");
    return new Sway(verticalLb, Math.PI * Math.PI * bending / (lengthIn * lengthIn));
  }

  /** Vertical load over critical load; at 1 or more the posts cannot stand. */
  public double stabilityRatio() {
    return verticalLb / criticalLb;
  }

  /** False if the posts would fall over by themselves. */
  public boolean stable() {
    return stabilityRatio() < 1;
  }

  /** What first-order sway is multiplied by, 1 or more; infinite if the posts cannot stand. */
  public double amplifierFactor() {
    return stable() ? 1 / (1 - stabilityRatio()) : Double.POSITIVE_INFINITY;
  }
}

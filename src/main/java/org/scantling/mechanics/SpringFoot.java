package org.scantling.mechanics;

/**
 * A column that is free at its head and whose foot turns as it is bent, by the moment there.
 *
 * @param turningInLb moment that would turn the foot by one, in-lb; endless for a foot that does
 *     not turn
 * @param stiffnessLbIn2 EI of the column
 * @param heightIn h, foot to head
 */
public record SpringFoot(double turningInLb, double stiffnessLbIn2, double heightIn) {
  private static final int HALVINGS = 60;

  public SpringFoot {
    if (!(turningInLb > 0 && stiffnessLbIn2 > 0 && heightIn > 0)) {
      throw new IllegalArgumentException(
          "a foot that turns must have stiffnesses and a height above zero, found "
              + turningInLb
              + " in-lb, "
              + stiffnessLbIn2
              + " lb-in2 and "
              + heightIn
              + " in");
    }
  }

  /**
   * How much longer the column buckles than one whose foot does not turn.
   *
   * @return (π/2)/x with x tan x = c h/EI; 1 for a foot that does not turn
   *     <p>Source: Timoshenko and Gere, Theory of Elastic Stability, 2nd edition, 2.3 and 2.4, a
   *     column with one end free and the other elastically built in (from memory)
   *     <p>Worked number: c h/EI = π/4 makes x = π/4 and the factor 2.
   */
  public double softeningFactor() {
    if (Double.isInfinite(turningInLb)) {
      return 1;
    }
    double heldRatio = turningInLb * heightIn / stiffnessLbIn2;
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (middle * Math.tan(middle) > heldRatio) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Math.PI / 2 / high;
  }
}

package org.scantling.mechanics;

/**
 * The largest of something along a beam or member, and where it is.
 *
 * @param atIn place, inches from the left tip (of a frame member: from its start)
 * @param amount the amount with its sign, in the unit of the method that answered
 */
public record Peak(double atIn, double amount) {
  Peak orLarger(double otherAtIn, double other) {
    return Math.abs(other) > Math.abs(amount) ? new Peak(otherAtIn, other) : this;
  }

  Peak orMore(double otherAtIn, double other) {
    return other > amount ? new Peak(otherAtIn, other) : this;
  }

  Peak orLess(double otherAtIn, double other) {
    return other < amount ? new Peak(otherAtIn, other) : this;
  }
}

package org.scantling.mechanics;

/**
 * Finds how a straight element starts (its shear, moment and slope) from the movements of its ends
 * and from what its loads alone would do to a free walk from a state of zero.
 *
 * <p>All for EI = 1. With unit movements and no load it yields the element's stiffness; with loads
 * and no movement the fixed-end forces. So one formula serves both.
 *
 * <p>Source: slope-deflection relations of a prismatic beam, any strength-of-materials text, e.g.
 * Gere, Mechanics of Materials; with shear deformation as Timoshenko.
 *
 * @param lengthIn length of the element
 * @param shearFlexibility EI over the shear stiffness, in²; zero for slender (Bernoulli) beams
 * @param hinges which ends turn freely
 */
record ElementEnds(double lengthIn, double shearFlexibility, Hinges hinges) {

  /**
   * The state at the start.
   *
   * @param start slope and deflection of the start's node (shear and moment unused)
   * @param end slope and deflection of the end's node (shear and moment unused)
   * @param free the state at the end of a walk from zero under the loads alone
   */
  LineState startState(LineState start, LineState end, LineState free) {
    return switch (hinges) {
      case NONE -> rigid(start, end, free);
      case START -> hingedStart(start, end, free);
      case END -> hingedEnd(start, end, free);
      case BOTH -> hingedBoth(start, end, free);
    };
  }

  private LineState rigid(LineState start, LineState end, LineState free) {
    double length = lengthIn;
    double drop = start.deflection + start.slope * length + free.deflection - end.deflection;
    double turn = start.slope + free.slope - end.slope;
    double shear =
        (turn * length / 2 - drop) / (length * (length * length / 12 + shearFlexibility));
    double moment = turn / length - shear * length / 2;
    return new LineState(shear, moment, start.slope, start.deflection);
  }

  private LineState hingedStart(LineState start, LineState end, LineState free) {
    double length = lengthIn;
    double turn = end.slope - free.slope;
    double shear =
        (end.deflection - start.deflection - free.deflection - turn * length) / hingedFlexibility();
    double slope = turn + shear * length * length / 2;
    return new LineState(shear, 0, slope, start.deflection);
  }

  private LineState hingedEnd(LineState start, LineState end, LineState free) {
    double length = lengthIn;
    double free0 = free.deflection + free.moment * length * length / 2;
    double shear =
        (end.deflection - start.deflection - start.slope * length - free0) / hingedFlexibility();
    double moment = -free.moment - shear * length;
    return new LineState(shear, moment, start.slope, start.deflection);
  }

  private LineState hingedBoth(LineState start, LineState end, LineState free) {
    double length = lengthIn;
    double shear = -free.moment / length;
    double sag = free.deflection - shear * length * (length * length / 6 - shearFlexibility);
    double slope = (end.deflection - start.deflection - sag) / length;
    return new LineState(shear, 0, slope, start.deflection);
  }

  private double hingedFlexibility() {
    return lengthIn * (lengthIn * lengthIn / 3 + shearFlexibility);
  }
}

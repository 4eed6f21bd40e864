package org.scantling.mechanics;

/**
 * Shear, moment, slope and deflection at one place of a beam whose stiffness EI is taken as 1.
 *
 * <p>Walking along the beam is exact: under an even load the moment is a parabola and the
 * deflection a quartic. Mutable, because a walk takes thousands of steps.
 */
final class LineState {
  double shear;
  double moment;
  double slope;
  double deflection;

  LineState(double shear, double moment, double slope, double deflection) {
    this.shear = shear;
    this.moment = moment;
    this.slope = slope;
    this.deflection = deflection;
  }

  static LineState zero() {
    return new LineState(0, 0, 0, 0);
  }

  /**
   * Walks on by one step under an even load.
   *
   * @param step length of the step, in
   * @param load lb/in, downwards positive
   * @param shearFlexibility EI over the shear stiffness, in²; zero for slender (Bernoulli) beams
   */
  void walk(double step, double load, double shearFlexibility) {
    double bend = step * (moment / 2 + step * (shear / 6 - step * load / 24));
    double turn = moment + step * (shear / 2 - step * load / 6);
    double gain = step * (shear - step * load / 2);
    deflection += step * (slope - bend) + shearFlexibility * gain;
    slope -= step * turn;
    moment += gain;
    shear -= step * load;
  }
}

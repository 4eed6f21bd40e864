package org.scantling.judge;

/** Yield-limit values of a dowel between two timbers: NDS 2018 12.3.1, reference value in lb. */
final class Yield {
  private final double diameterIn;
  private final double bendingYieldPsi;

  Yield(double diameterIn, double bendingYieldPsi) {
    this.diameterIn = diameterIn;
    this.bendingYieldPsi = bendingYieldPsi;
  }

  /** Dowel bearing strength at an angle to the grain, 12.3.3 and 12.3.4. */
  double bearingPsi(double gravity, double degrees) {
    if (diameterIn < 0.25) {
      return 16600 * Math.pow(gravity, 1.84);
    }
    double with = 11200 * gravity;
    double over = 6100 * Math.pow(gravity, 1.45) / Math.sqrt(diameterIn);
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    return with * over / (with * sin * sin + over * cos * cos);
  }

  double single(double mainIn, double sideIn, double mainPsi, double sidePsi, double degrees) {
    double d = diameterIn;
    double re = mainPsi / sidePsi;
    double rt = mainIn / sideIn;
    double k1 =
        (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt))
            / (1 + re);
    double k2 =
        -1
            + Math.sqrt(
                2 * (1 + re)
                    + 2 * bendingYieldPsi * (1 + 2 * re) * d * d / (3 * mainPsi * mainIn * mainIn));
    double least = d * mainIn * mainPsi / reduction(0, degrees);
    least = Math.min(least, d * sideIn * sidePsi / reduction(0, degrees));
    least = Math.min(least, k1 * d * sideIn * sidePsi / reduction(1, degrees));
    least = Math.min(least, k2 * d * mainIn * mainPsi / ((1 + 2 * re) * reduction(2, degrees)));
    least = Math.min(least, threeSide(sideIn, mainPsi, re) / reduction(2, degrees));
    return Math.min(least, four(mainPsi, re) / reduction(2, degrees));
  }

  /**
   * The same over a gap that is packed out: the general equations of TR12, in which each mode is
   * the root of A P^2 + B P + C = 0 (from memory).
   */
  double apart(double mainIn, double sideIn, double mainPsi, double sidePsi, Gap gap) {
    double main = mainPsi * diameterIn;
    double side = sidePsi * diameterIn;
    double bends = bendingYieldPsi * Math.pow(diameterIn, 3) / 6;
    double turnsMain = main * mainIn * mainIn / 4;
    double turnsSide = side * sideIn * sideIn / 4;
    double least = Math.min(main * mainIn, side * sideIn) / reduction(0, gap.degrees());
    double both =
        root(
            1 / (4 * side) + 1 / (4 * main),
            sideIn / 2 + gap.wideIn() + mainIn / 2,
            turnsSide + turnsMain);
    double inMain =
        root(1 / (2 * side) + 1 / (4 * main), gap.wideIn() + mainIn / 2, bends + turnsMain);
    double inSide =
        root(1 / (4 * side) + 1 / (2 * main), sideIn / 2 + gap.wideIn(), turnsSide + bends);
    double inBoth = root(1 / (2 * side) + 1 / (2 * main), gap.wideIn(), 2 * bends);
    least = Math.min(least, both / reduction(1, gap.degrees()));
    return Math.min(
        least, Math.min(inMain, Math.min(inSide, inBoth)) / reduction(2, gap.degrees()));
  }

  /** What lies between two timbers, and the angle of the force to the grain of one of them. */
  record Gap(double wideIn, double degrees) {}

  private static double root(double a, double b, double held) {
    return (Math.sqrt(b * b + 4 * a * held) - b) / (2 * a);
  }

  double twice(double mainIn, double sideIn, double mainPsi, double sidePsi, double degrees) {
    double re = mainPsi / sidePsi;
    double least = diameterIn * mainIn * mainPsi / reduction(0, degrees);
    least = Math.min(least, 2 * diameterIn * sideIn * sidePsi / reduction(0, degrees));
    least = Math.min(least, 2 * threeSide(sideIn, mainPsi, re) / reduction(2, degrees));
    return Math.min(least, 2 * four(mainPsi, re) / reduction(2, degrees));
  }

  private double threeSide(double sideIn, double mainPsi, double re) {
    double k3 =
        -1
            + Math.sqrt(
                2 * (1 + re) / re
                    + 2
                        * bendingYieldPsi
                        * (2 + re)
                        * diameterIn
                        * diameterIn
                        / (3 * mainPsi * sideIn * sideIn));
    return k3 * diameterIn * sideIn * mainPsi / (2 + re);
  }

  private double four(double mainPsi, double re) {
    return diameterIn * diameterIn * Math.sqrt(2 * mainPsi * bendingYieldPsi / (3 * (1 + re)));
  }

  /** Rd of Table 12.3.1B: 0 for modes Im and Is, 1 for II, 2 for III and IV. */
  private double reduction(int mode, double degrees) {
    if (diameterIn < 0.25) {
      return diameterIn <= 0.17 ? 2.2 : 10 * diameterIn + 0.5;
    }
    double turned = 1 + 0.25 * degrees / 90;
    return (mode == 0 ? 4 : mode == 1 ? 3.6 : 3.2) * turned;
  }
}

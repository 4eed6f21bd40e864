package org.scantling.judge;

import java.util.Arrays;

/**
 * A timber under everything that can lie on it, and the worst that a quantity comes to by its line
 * of influence. Live load lies on whichever bays are worst (ASCE 7-16 4.8.1), snow by the cases of
 * 7.5.1, tails counted as spans; one person may stand instead of live load.
 *
 * @param ownLbPerIn self weight of the timber
 * @param ownIn length of timber that hangs on each node
 * @param fixedLb dead weight on single nodes, such as that of blocks between crossbeams
 * @param topUnits units of the top on each node, by bay
 * @param top what a unit of the top brings
 * @param personLb the person, with the lever that a tail adds
 * @param personAt nodes where the person counts
 */
record Loaded(
    double ownLbPerIn,
    double[] ownIn,
    double[] fixedLb,
    double[][] topUnits,
    Top top,
    double personLb,
    boolean[] personAt) {

  double most(double[] line, Combination load) {
    return worst(line, load, 1);
  }

  double least(double[] line, Combination load) {
    return -worst(line, load, -1);
  }

  double size(double[] line, Combination load) {
    return Math.max(worst(line, load, 1), worst(line, load, -1));
  }

  /** Sag with creep under what stays, and under what comes and goes, both without sign. */
  double lastingSag(double[] line, Combination load) {
    return Math.abs(steady(line, load, true)) * 2 + passingSag(line, load);
  }

  double passingSag(double[] line, Combination load) {
    return Math.max(passing(line, load, 1, false), passing(line, load, -1, false));
  }

  private double worst(double[] line, Combination load, int sign) {
    double withVine = sign * steady(line, load, true);
    double without = sign * steady(line, load, false);
    return Math.max(withVine, without) + passing(line, load, sign, true);
  }

  private double steady(double[] line, Combination load, boolean vine) {
    double units = Arrays.stream(topUnits).mapToDouble(bay -> dot(line, bay)).sum();
    double standing = ownLbPerIn * dot(line, ownIn) + dot(line, fixedLb);
    return load.dead() * (standing + top.deadLb() * units)
        + (vine ? load.vine() * top.vineLb() * units : 0);
  }

  private double passing(double[] line, Combination load, int sign, boolean person) {
    double live = 0;
    double all = 0;
    double[] units = new double[topUnits.length];
    for (int bay = 0; bay < units.length; bay++) {
      units[bay] = sign * dot(line, topUnits[bay]);
      live += Math.max(0, units[bay]);
      all += units[bay];
    }
    double snow = load.snow() > 0 ? snow(units, all) : 0;
    double stands = 0;
    for (int i = 0; person && i < line.length; i++) {
      stands = personAt[i] ? Math.max(stands, sign * line[i] * personLb) : stands;
    }
    double wind = load.up() ? -top.liftLb() : top.pressLb();
    return load.live() * Math.max(live * top.liveLb(), stands)
        + load.snow() * snow * top.snowLb()
        + load.wind() * wind * all;
  }

  /** In full everywhere; on an end span, all but an end span or two neighbours, half elsewhere. */
  private static double snow(double[] units, double all) {
    int last = units.length - 1;
    double most = all;
    most = Math.max(most, all / 2 + units[0] / 2);
    most = Math.max(most, all / 2 + units[last] / 2);
    most = Math.max(most, all - units[0] / 2);
    most = Math.max(most, all - units[last] / 2);
    for (int bay = 0; bay < last; bay++) {
      most = Math.max(most, all / 2 + (units[bay] + units[bay + 1]) / 2);
    }
    return most;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}

package org.scantling.judge;

import java.util.List;

/**
 * A combination of ASCE 7-16 2.4.1 with the load-duration factor of its shortest load.
 *
 * @param name as the proposal prints it
 * @param duration C_D
 * @param dead factor of self weight
 * @param vine factor of the climbers, which are left out where they help
 * @param live factor of live load
 * @param snow factor of snow
 * @param wind factor of strength-level wind
 * @param up whether the wind lifts the top; it presses it otherwise
 */
record Combination(
    String name,
    double duration,
    double dead,
    double vine,
    double live,
    double snow,
    double wind,
    boolean up) {
  static final Combination DEAD = new Combination("D", 0.9, 1, 1, 0, 0, 0, false);
  static final Combination LIFT = new Combination("0.6D+0.6W", 1.6, 0.6, 0, 0, 0, 0.6, true);
  static final Combination PRESSED = new Combination("D+0.6W", 1.6, 1, 1, 0, 0, 0.6, false);
  static final List<Combination> ALL =
      List.of(
          DEAD,
          new Combination("D+Lr", 1.25, 1, 1, 1, 0, 0, false),
          new Combination("D+S", 1.15, 1, 1, 0, 1, 0, false),
          PRESSED,
          new Combination("D+0.75(0.6W)+0.75Lr", 1.6, 1, 1, 0.75, 0, 0.45, false),
          new Combination("D+0.75(0.6W)+0.75S", 1.6, 1, 1, 0, 0.75, 0.45, false),
          LIFT);
}

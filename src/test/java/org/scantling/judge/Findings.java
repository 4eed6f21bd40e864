package org.scantling.judge;

import java.util.Map;
import java.util.TreeMap;

/** The worst of each check by the judge's own account. */
final class Findings {
  /**
   * One worst case.
   *
   * @param ratio demand over capacity
   * @param demand what is asked
   * @param capacity what there is
   * @param combination under which loads
   */
  record Worst(double ratio, double demand, double capacity, String combination) {}

  private final Map<String, Worst> worst = new TreeMap<>();

  void add(String check, Combination load, double demand, double capacity) {
    Worst now = new Worst(demand / capacity, demand, capacity, load.name());
    worst.merge(check, now, (a, b) -> a.ratio() >= b.ratio() ? a : b);
  }

  Map<String, Worst> all() {
    return worst;
  }
}

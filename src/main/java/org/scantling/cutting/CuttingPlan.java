package org.scantling.cutting;

import java.util.List;

/**
 * How to cut, exactly as many pieces as were asked for.
 *
 * @param cuts longest sticks first
 * @param cost of all sticks
 * @param bound no plan costs less
 */
public record CuttingPlan(List<Cut> cuts, long cost, long bound) {
  public CuttingPlan {
    cuts = List.copyOf(cuts);
  }

  /** True where no other plan costs less. */
  public boolean proven() {
    return cost <= bound;
  }

  /** How much more than the bound it costs, as a share of the bound; 0 where proven. */
  public double gapRatio() {
    return proven() ? 0 : (double) (cost - bound) / bound;
  }

  /** Sticks to buy. */
  public int sticks() {
    return cuts.stream().mapToInt(Cut::times).sum();
  }
}

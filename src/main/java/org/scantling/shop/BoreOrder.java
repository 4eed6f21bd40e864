package org.scantling.shop;

import java.util.Comparator;
import java.util.List;

/** Holes from the first end on, at the same distance the lower first. */
final class BoreOrder {
  private BoreOrder() {}

  static List<Bore> sorted(List<Bore> bores) {
    return bores.stream()
        .sorted(Comparator.comparingDouble(Bore::atIn).thenComparingDouble(Bore::offIn))
        .toList();
  }
}

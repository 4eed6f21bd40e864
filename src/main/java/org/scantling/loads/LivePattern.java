package org.scantling.loads;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One way in which a live load may lie on a continuous beam, spans and end overhangs alike.
 *
 * <p>A load on one span bends the next the other way. So over a support a beam hogs most, and the
 * support is pressed hardest, under the two spans beside it and every other span beyond; it is
 * lifted most by the rest of them.
 *
 * @param spanFactors 1 for a loaded span and 0 for an empty one, first to last; an overhang at an
 *     end counts as a span
 */
public record LivePattern(List<Double> spanFactors) {
  public LivePattern {
    spanFactors = List.copyOf(spanFactors);
  }

  /**
   * Lists the patterns that a continuous beam must be checked for.
   *
   * @param spanCount spans and end overhangs of the beam, at least 1
   * @return the load everywhere first, then every other span, the rest, and for each support the
   *     pair of spans beside it with every other span beyond, and the rest of that
   * @throws IllegalArgumentException if there is no span
   *     <p>Source: ASCE 7, 2016, section 4.8.1, from memory; the pairs by the theorem of three
   *     moments
   *     <p>Worked number: two bays with a tail at each end give the pair 0, 1, 1, 0.
   */
  public static List<LivePattern> forSpans(int spanCount) {
    if (spanCount < 1) {
      throw new IllegalArgumentException("span count " + spanCount + " must be at least 1");
    }
    Set<List<Double>> patterns = new LinkedHashSet<>();
    List<Double> everywhere = new ArrayList<>();
    List<Double> odd = new ArrayList<>();
    List<Double> even = new ArrayList<>();
    for (int span = 0; span < spanCount; span++) {
      everywhere.add(1.0);
      odd.add((double) (span % 2));
      even.add((double) (1 - span % 2));
    }
    patterns.addAll(List.of(everywhere, odd, even));
    for (int left = 0; left + 1 < spanCount; left++) {
      patterns.add(beside(spanCount, left, 1));
      patterns.add(beside(spanCount, left, 0));
    }
    return patterns.stream().map(LivePattern::new).toList();
  }

  /**
   * @param left the span on the left of the support
   * @param onPair what lies on the two spans beside it, 1 or 0
   */
  private static List<Double> beside(int spanCount, int left, int onPair) {
    List<Double> factors = new ArrayList<>();
    for (int span = 0; span < spanCount; span++) {
      int away = span <= left ? left - span : span - left - 1;
      factors.add((double) (away % 2 == 0 ? onPair : 1 - onPair));
    }
    return factors;
  }
}

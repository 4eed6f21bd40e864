package org.scantling.loads;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.scantling.quantity.Require;

/**
 * One way snow may lie on a continuous beam: full on some spans, half on the others.
 *
 * <p>Snow slides, blows and melts unevenly; a header over several posts can bend harder under an
 * uneven load than under a full one.
 *
 * @param spanFactors factor of the balanced snow on each span, first to last; an overhang at an end
 *     counts as a span
 */
public record SnowPattern(List<Double> spanFactors) {
  private static final double FULL = 1.0;
  private static final double HALF = 0.5;

  public SnowPattern {
    if (spanFactors.isEmpty()) {
      throw new IllegalArgumentException("a snow pattern has 0 spans and must have at least 1");
    }
    spanFactors.forEach(factor -> Require.share("span factor of a snow pattern", factor));
    spanFactors = List.copyOf(spanFactors);
  }

  /**
   * Lists the snow patterns that a continuous beam must be checked for.
   *
   * @param spanCount spans and end overhangs of the beam, at least 1
   * @return the balanced load first, then each different pattern: an end span full and the rest
   *     half, an end span half and the rest full, and each neighbouring pair full and the rest half
   * @throws IllegalArgumentException if there is no span
   *     <p>Source: ASCE 7, 2016, section 7.5.1; end overhangs as spans from memory
   *     <p>Worked number: three spans give five patterns, the second of them 1, 0.5, 0.5.
   */
  public static List<SnowPattern> forSpans(int spanCount) {
    if (spanCount < 1) {
      throw new IllegalArgumentException("span count " + spanCount + " must be at least 1");
    }
    Set<List<Double>> patterns = new LinkedHashSet<>();
    patterns.add(pattern(spanCount, FULL, FULL, 0, spanCount));
    if (spanCount > 1) {
      int last = spanCount - 1;
      patterns.add(pattern(spanCount, FULL, HALF, 0, 1));
      patterns.add(pattern(spanCount, FULL, HALF, last, spanCount));
      patterns.add(pattern(spanCount, HALF, FULL, 0, 1));
      patterns.add(pattern(spanCount, HALF, FULL, last, spanCount));
      for (int left = 0; left < last; left++) {
        patterns.add(pattern(spanCount, FULL, HALF, left, left + 2));
      }
    }
    return patterns.stream().map(SnowPattern::new).toList();
  }

  /**
   * Lists the snow patterns of a beam that is cut over some of its supports: those of {@link
   * #forSpans}, and the end spans of every piece by themselves.
   *
   * @param spanCount spans and end overhangs of all pieces together, at least 1
   * @param cuts how many spans lie before each cut
   * @return the balanced load first, then each different pattern
   * @throws IllegalArgumentException if there is no span
   *     <p>Source: ASCE 7, 2016, section 7.5.1; end overhangs as spans from memory
   *     <p>Worked number: four spans cut in the middle have twelve patterns; one of them is 0.5, 1,
   *     0.5, 0.5.
   */
  public static List<SnowPattern> forPieces(int spanCount, List<Integer> cuts) {
    Set<SnowPattern> patterns = new LinkedHashSet<>(forSpans(spanCount));
    for (int cut : cuts) {
      for (int end : new int[] {cut - 1, cut}) {
        patterns.add(new SnowPattern(pattern(spanCount, FULL, HALF, end, end + 1)));
        patterns.add(new SnowPattern(pattern(spanCount, HALF, FULL, end, end + 1)));
      }
    }
    return List.copyOf(patterns);
  }

  private static List<Double> pattern(
      int spanCount, double inside, double outside, int from, int to) {
    List<Double> factors = new ArrayList<>(Collections.nCopies(spanCount, outside));
    Collections.fill(factors.subList(from, to), inside);
    return factors;
  }
}

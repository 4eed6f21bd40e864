package org.scantling.confirm;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.scantling.loads.LoadCombination;

/**
 * How the load that comes and goes lies on a beam in one combination.
 *
 * @param liveShares share of the live load on each overhang and span, from the left
 * @param snowShares the same of the snow
 * @param personAtIn where one person stands instead of the live load, from the left tip
 */
public record Lying(
    LoadCombination combination,
    List<Double> liveShares,
    List<Double> snowShares,
    OptionalDouble personAtIn) {

  static Lying none(LoadCombination combination, int spans) {
    List<Double> zeros = Collections.nCopies(spans, 0.0);
    return new Lying(combination, zeros, zeros, OptionalDouble.empty());
  }

  Lying live(List<Double> shares) {
    return new Lying(combination, shares, snowShares, personAtIn);
  }

  Lying snow(List<Double> shares) {
    return new Lying(combination, liveShares, shares, personAtIn);
  }

  Lying person(double atIn) {
    return new Lying(combination, liveShares, snowShares, OptionalDouble.of(atIn));
  }
}

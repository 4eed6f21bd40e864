package org.scantling.timber;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * What one fastener carries sideways, before factors, with every mode's value.
 *
 * @param modesLb each mode that can happen and its reduced value, at least one
 * @param bearingRatio Re, dowel bearing of the main piece over the side piece
 * @param lengthRatio Rt, length in the main piece over the side piece
 * @param k1 of mode II
 * @param k2 of mode IIIm
 * @param k3 of mode IIIs
 */
public record LateralValue(
    Map<YieldMode, Double> modesLb,
    double bearingRatio,
    double lengthRatio,
    double k1,
    double k2,
    double k3) {
  public LateralValue {
    modesLb = Collections.unmodifiableMap(new EnumMap<>(modesLb));
  }

  /** The mode that gives way first. */
  public YieldMode governing() {
    return Collections.min(modesLb.entrySet(), Comparator.comparingDouble(Map.Entry::getValue))
        .getKey();
  }

  /** Z in pounds, the value of the governing mode. */
  public double valueLb() {
    return Collections.min(modesLb.values());
  }

  /** Z, ready for its factors. */
  public AdjustedForce unadjusted() {
    return new AdjustedForce("Z", valueLb(), java.util.List.of());
  }
}

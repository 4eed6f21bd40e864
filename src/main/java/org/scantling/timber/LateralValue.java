package org.scantling.timber;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * What one fastener carries sideways, before factors, with every mode's value.
 *
 * @param equations how the modes were worked
 * @param doubled true where the main piece is held between two side pieces
 * @param modesLb each mode that can happen and its reduced value, at least one
 */
public record LateralValue(
    YieldEquations equations, boolean doubled, Map<YieldMode, Double> modesLb)
    implements Calculated {
  public LateralValue {
    modesLb = Collections.unmodifiableMap(new EnumMap<>(modesLb));
  }

  /** Re, dowel bearing of the main piece over the side piece. */
  public double bearingRatio() {
    return equations.bearingRatio();
  }

  /** Rt, length in the main piece over the side piece. */
  public double lengthRatio() {
    return equations.lengthRatio();
  }

  /** Of mode II. */
  public double k1() {
    return equations.k1();
  }

  /** Of mode IIIm. */
  public double k2() {
    return equations.k2();
  }

  /** Of mode IIIs. */
  public double k3() {
    return equations.k3();
  }

  /** The piece that holds the fastener's point or nut. */
  public DowelMember main() {
    return equations.main();
  }

  /** The piece under its head. */
  public DowelMember side() {
    return equations.side();
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
    return new AdjustedForce("Z", valueLb(), List.of());
  }

  /** Every mode with what goes into it; what the two pieces are worth is told of them. */
  @Override
  public List<FormulaLine> lines() {
    return equations.lines(modesLb, doubled);
  }
}

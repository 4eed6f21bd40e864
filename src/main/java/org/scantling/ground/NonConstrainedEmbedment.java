package org.scantling.ground;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How deep a post must stand that nothing holds at the surface.
 *
 * @param load P and h
 * @param width b
 * @param s1 S1, pressure allowed at a third of the depth
 * @param aIn the length A = 2.34 P / (S1 b), in
 * @param depthIn d = 0.5 A (1 + √(1 + 4.36 h / A)), in
 * @param iterationCount passes until S1 and d agreed; 0 where nothing pushes, 1 for a single pass
 */
public record NonConstrainedEmbedment(
    LateralLoad load,
    EffectiveWidth width,
    SoilPressure s1,
    double aIn,
    double depthIn,
    int iterationCount)
    implements Calculated {
  private static final double FORCE_COEFFICIENT = 2.34;
  private static final double HEIGHT_COEFFICIENT = 4.36;
  private static final double S1_AT = 1.0 / 3;
  private static final double FIRST_TRIAL_IN = 36;
  private static final double AGREEMENT = 1e-12;
  private static final int MOST_PASSES = 200;

  /**
   * Finds the least embedment.
   *
   * <p>S1 grows with the depth and the depth shrinks with S1, so the formula is repeated until both
   * agree. Each trial is the geometric mean of the last depth and the one it asked for: plain
   * repetition swings for ever when the push is at the ground.
   *
   * @param load P and h, allowable-stress level
   * @param width b
   * @param soil sideways pressure and its increase
   * @return depth with A, S1 and the number of passes; zero where nothing pushes
   *     <p>Source: IBC, 2018, section 1807.3.2.1
   *     <p>Worked number: 150 lb at 5 ft, b 1 ft, 150 psf/ft give 4.056 ft (48.7 in).
   */
  public static NonConstrainedEmbedment of(
      LateralLoad load, EffectiveWidth width, LateralResistance soil) {
    if (!(load.forceLb() > 0)) {
      return new NonConstrainedEmbedment(load, width, soil.at(0, S1_AT), 0, 0, 0);
    }
    double trialIn = FIRST_TRIAL_IN;
    for (int pass = 1; pass <= MOST_PASSES; pass++) {
      SoilPressure s1 = soil.at(trialIn, S1_AT);
      NonConstrainedEmbedment asked = onePass(load, width, s1);
      if (Math.abs(asked.depthIn - trialIn) <= AGREEMENT * trialIn) {
        return new NonConstrainedEmbedment(load, width, s1, asked.aIn, asked.depthIn, pass);
      }
      trialIn = Math.sqrt(trialIn * asked.depthIn);
    }
    throw new IllegalStateException("embedment for " + load + " in " + soil + " did not settle");
  }

  /**
   * Works the formula once with a given S1, to follow a sheet that stops after one pass.
   *
   * @param load P and h
   * @param width b
   * @param s1 S1, above zero
   * @return depth with A; S1 is not brought to agree with the depth
   * @throws IllegalArgumentException if S1 is not above zero
   *     <p>Source: IBC, 2018, section 1807.3.2.1, equation 18-1
   *     <p>Worked number: 3000 lb, b 1 ft, S1 400 psf give A 17.55 ft (210.6 in).
   */
  public static NonConstrainedEmbedment onePass(
      LateralLoad load, EffectiveWidth width, SoilPressure s1) {
    double s1Psf = Require.positive("S1", s1.pressurePsf(), "psf");
    double widthFt = width.widthIn() / Inches.PER_FOOT;
    double aIn = FORCE_COEFFICIENT * load.forceLb() / (s1Psf * widthFt) * Inches.PER_FOOT;
    // The square root is taken of A² + 4.36 h A so that A = 0 needs no special case.
    double rootIn = Math.sqrt(aIn * aIn + HEIGHT_COEFFICIENT * load.heightIn() * aIn);
    return new NonConstrainedEmbedment(load, width, s1, aIn, 0.5 * (aIn + rootIn), 1);
  }

  /** S1, psf. */
  public double s1Psf() {
    return s1.pressurePsf();
  }

  /** Nothing where nothing pushes. */
  @Override
  public List<FormulaLine> lines() {
    if (!(depthIn > 0)) {
      return List.of();
    }
    List<FormulaLine> lines = new ArrayList<>(width.lines());
    lines.addAll(s1.lines());
    boolean collar = width.kind() == EffectiveWidth.Kind.CONCRETE_COLLAR;
    Measure length = Measure.feet(aIn);
    lines.add(
        FormulaLine.of(collar ? "length-hole" : "length", length)
            .with("soil", Measure.psf(s1.pressurePsf()))
            .with("push", Measure.pounds(load.forceLb()))
            .with(collar ? "hole" : "width", Measure.feet(width.widthIn())));
    lines.add(
        FormulaLine.of("depth", Measure.feet(depthIn))
            .with("length", length)
            .with("push-height", Measure.feet(load.heightIn())));
    return lines;
  }
}

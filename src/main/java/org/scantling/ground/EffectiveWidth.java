package org.scantling.ground;

import java.util.List;
import java.util.Locale;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * The width with which a buried post leans on the soil, the b of the embedment formulas.
 *
 * @param kind what stands against the soil
 * @param acrossIn its diameter or the narrower face, in
 * @param widthIn b, in, above zero
 */
public record EffectiveWidth(Kind kind, double acrossIn, double widthIn) implements Calculated {

  /** What stands against the soil. */
  public enum Kind {
    /** A round post in tamped fill. */
    ROUND_POST,
    /** A square post in tamped fill. */
    SQUARE_POST,
    /** A collar of concrete around the post. */
    CONCRETE_COLLAR;

    /** Its word in explanations. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public EffectiveWidth {
    Require.positive("effective width", widthIn, "in");
  }

  /** A round post in tamped fill: its diameter (in). */
  public static EffectiveWidth roundPost(double diameterIn) {
    return new EffectiveWidth(Kind.ROUND_POST, diameterIn, diameterIn);
  }

  /**
   * A sawn post in tamped fill: the diagonal of its square.
   *
   * <p>The clause speaks of square posts; an oblong post is taken as the square of its narrower
   * face, the cautious reading.
   *
   * @param breadthIn dressed breadth, in, above zero
   * @param depthIn dressed depth, in, above zero
   * @return √2 times the narrower face, in
   * @throws IllegalArgumentException if a face is not above zero
   *     <p>Source: IBC, 2018, section 1807.3.2.1
   *     <p>Worked number: a 6x6 (5.5 in) leans on 7.78 in.
   */
  public static EffectiveWidth squarePost(double breadthIn, double depthIn) {
    Require.positive("post breadth", breadthIn, "in");
    Require.positive("post depth", depthIn, "in");
    double acrossIn = Math.min(breadthIn, depthIn);
    return new EffectiveWidth(Kind.SQUARE_POST, acrossIn, Math.sqrt(2) * acrossIn);
  }

  /** A concrete collar that fills the hole: its diameter (in). */
  public static EffectiveWidth concreteCollar(double diameterIn) {
    return new EffectiveWidth(Kind.CONCRETE_COLLAR, diameterIn, diameterIn);
  }

  /** Nothing to work where a diameter is the width. */
  @Override
  public List<FormulaLine> lines() {
    return kind == Kind.SQUARE_POST
        ? List.of(
            FormulaLine.of("width", Measure.feet(widthIn)).with("breadth", Measure.feet(acrossIn)))
        : List.of();
  }
}

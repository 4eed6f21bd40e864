package org.scantling.ground;

import java.util.Locale;
import org.scantling.quantity.Require;

/**
 * The width with which a buried post leans on the soil, the b of the embedment formulas.
 *
 * @param kind what stands against the soil
 * @param widthIn b, in, above zero
 */
public record EffectiveWidth(Kind kind, double widthIn) {

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
    return new EffectiveWidth(Kind.ROUND_POST, diameterIn);
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
    return new EffectiveWidth(Kind.SQUARE_POST, Math.sqrt(2) * Math.min(breadthIn, depthIn));
  }

  /** A concrete collar that fills the hole: its diameter (in). */
  public static EffectiveWidth concreteCollar(double diameterIn) {
    return new EffectiveWidth(Kind.CONCRETE_COLLAR, diameterIn);
  }
}

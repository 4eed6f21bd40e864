package org.scantling.confirm;

import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * What stands square to the wind, of one side as it leans on the hardest-pressed post, or of one
 * crossbeam with its posts. All in square inches.
 *
 * @param beamsIn2 headers across the walk, crossbeams along it
 * @param endsIn2 ends of crossbeams
 * @param postsIn2 one post of a side, both of a crossbeam
 * @param railsIn2 rails
 * @param picketsIn2 pickets
 * @param picketTopRatio share of the wind on pickets that counts at the top: with the rest spread
 *     over the post it turns the post as far as a half on the header and a half on the rail do
 * @param lengthIn length of the outline
 * @param heightIn height of the outline
 */
public record WindFace(
    double beamsIn2,
    double endsIn2,
    double postsIn2,
    double railsIn2,
    double picketsIn2,
    double picketTopRatio,
    double lengthIn,
    double heightIn) {
  /** What counts at the top. */
  public double topIn2() {
    return onHeaderIn2() + endsIn2;
  }

  double onHeaderIn2() {
    return beamsIn2 + picketTopRatio * picketsIn2;
  }

  /** What counts along the posts. */
  public double uprightIn2() {
    return postsIn2 + railsIn2 + (1 - picketTopRatio) * picketsIn2;
  }

  public double solidIn2() {
    return topIn2() + uprightIn2();
  }

  public double grossIn2() {
    return lengthIn * heightIn;
  }

  /** One of the two posts of a crossbeam. */
  double onePostIn2() {
    return postsIn2 / 2;
  }

  FormulaLine outline() {
    return FormulaLine.of("gross", Measure.squareFeet(grossIn2()))
        .with("length", Measure.feet(lengthIn))
        .with("height", Measure.feet(heightIn));
  }
}

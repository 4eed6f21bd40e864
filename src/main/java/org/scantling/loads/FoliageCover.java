package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * How leaves and stems stand in the wind in one season.
 *
 * @param fillRatio share of the area that they cover, 0 to 1
 * @param dragFactor drag coefficient of leaves that bend and let air through, zero or more; there
 *     is no code value, so it is common practice
 */
public record FoliageCover(double fillRatio, double dragFactor) {
  public FoliageCover {
    Require.share("foliage fill", fillRatio);
    Require.zeroOrMore("foliage drag factor", dragFactor, "");
  }
}

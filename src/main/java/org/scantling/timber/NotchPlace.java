package org.scantling.timber;

import org.scantling.quantity.Require;

/** Where along a bending member a notch lies. */
public enum NotchPlace {
  /** At the very end, over its bearing. */
  END,
  /** Inside the span, but not in its middle third. */
  OUTER_THIRD,
  /** In the middle third of the span, even if only in part. */
  MIDDLE_THIRD;

  /**
   * The place of a notch along a span.
   *
   * @param fromIn the notch's start from the member's end, 0 or more
   * @param toIn the notch's other side, above {@code fromIn} and not above the span
   * @param spanIn length from support to support, above 0
   * @return END where the notch runs out at either end, MIDDLE_THIRD where it enters that third.
   *     Worked: 0 to 3.5 in of 90 in is END, 4 to 7.5 in is OUTER_THIRD, 28 to 31.5 in is
   *     MIDDLE_THIRD.
   */
  public static NotchPlace along(double fromIn, double toIn, double spanIn) {
    Require.zeroOrMore("start of the notch", fromIn, "in");
    Require.positive("span", spanIn, "in");
    Require.within("other side of the notch", toIn, "in", fromIn, spanIn);
    if (toIn > spanIn / 3 && fromIn < spanIn * 2 / 3) {
      return MIDDLE_THIRD;
    }
    return fromIn > 0 && toIn < spanIn ? OUTER_THIRD : END;
  }
}

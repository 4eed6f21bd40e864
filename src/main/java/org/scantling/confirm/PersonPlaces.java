package org.scantling.confirm;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Where one person works a beam hardest, from its left tip.
 *
 * <p>On the tip; right over each support, which then carries most; beside it on either side, where
 * the beam is sheared most; in the middle of each span, which then sags most; and a little off the
 * middle, where it hogs most over the next support.
 *
 * <p>Where all spans are equal, the other half of the beam is the mirror of the first, and from the
 * fourth span on none is worked harder than the third.
 */
final class PersonPlaces {
  private static final int MOST_SPANS = 3;

  /** Share of a span from its other end at which a load hogs an end span most, by statics. */
  private static final double HOGS_MOST_SHARE = 1 / Math.sqrt(3);

  private static final double HAIR_IN = 1e-6;

  private PersonPlaces() {}

  /**
   * @param lengthIn tip to tip
   * @param supportsIn centres of the supports from the left tip
   * @param besideIn from the centre of a support to its edge
   */
  static List<Double> on(double lengthIn, double[] supportsIn, double besideIn) {
    Set<Double> places = new LinkedHashSet<>();
    places.add(0.0);
    boolean mirrored = equalSpans(supportsIn);
    int spans = mirrored ? Math.min(MOST_SPANS, supportsIn.length / 2) : supportsIn.length - 1;
    for (int span = 0; span < spans; span++) {
      addSpan(places, supportsIn[span], supportsIn[span + 1], besideIn);
      if (supportsIn.length > 2) {
        addHogging(places, supportsIn[span], supportsIn[span + 1]);
      }
    }
    if (!mirrored) {
      places.add(lengthIn);
    }
    return new ArrayList<>(places);
  }

  /** On one piece of a cut beam, whose ends are seldom alike. */
  static List<Double> onPiece(double[] supportsIn, double besideIn) {
    Set<Double> places = new LinkedHashSet<>();
    for (int span = 0; span + 1 < supportsIn.length; span++) {
      addSpan(places, supportsIn[span], supportsIn[span + 1], besideIn);
      if (supportsIn.length > 2) {
        addHogging(places, supportsIn[span], supportsIn[span + 1]);
      }
    }
    return new ArrayList<>(places);
  }

  private static boolean equalSpans(double[] supportsIn) {
    double firstIn = supportsIn[1] - supportsIn[0];
    for (int span = 1; span + 1 < supportsIn.length; span++) {
      if (Math.abs(supportsIn[span + 1] - supportsIn[span] - firstIn) > HAIR_IN) {
        return false;
      }
    }
    return true;
  }

  private static void addSpan(Set<Double> places, double fromIn, double toIn, double besideIn) {
    double halfIn = (toIn - fromIn) / 2;
    places.add(fromIn);
    places.add(fromIn + Math.min(besideIn, halfIn));
    places.add(fromIn + halfIn);
    places.add(toIn - Math.min(besideIn, halfIn));
    places.add(toIn);
  }

  private static void addHogging(Set<Double> places, double fromIn, double toIn) {
    double farIn = HOGS_MOST_SHARE * (toIn - fromIn);
    places.add(fromIn + farIn);
    places.add(toIn - farIn);
  }
}

package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.timber.Seat;

/**
 * A beam under the loads that work one of its checks hardest: what is gone over by hand.
 *
 * @param beam the beam and its supports
 * @param lying how the load that comes and goes lies on it
 * @param all everything in the combination
 * @param permanent what stays
 * @param passing what comes and goes
 * @param contact its seat at a support
 * @param netDepthIn depth over the supports, less notch and sinks
 * @param notchIn recess in its underside
 * @param unbracedIn longest stretch that may roll over
 * @param ratio how hard it is worked: demand over capacity of the check, or where only a load or a
 *     lift is asked for, that in lb
 */
public record BeamScene(
    ContinuousBeam beam,
    Lying lying,
    BeamResult all,
    BeamResult permanent,
    BeamResult passing,
    Seat contact,
    double netDepthIn,
    double notchIn,
    double unbracedIn,
    double ratio) {

  /** Length past the first support. */
  public double leftTailIn() {
    return beam.supportAtIn(0);
  }

  /** Length past the last support. */
  public double rightTailIn() {
    return beam.lengthIn() - beam.supportAtIn(beam.supportCount() - 1);
  }

  /** Length of a span, from 0. */
  public double spanIn(int span) {
    return beam.supportAtIn(span + 1) - beam.supportAtIn(span);
  }

  /** Moments over the supports under one of the results, sagging positive. */
  public List<Double> momentsInLb(BeamResult result) {
    List<Double> moments = new ArrayList<>();
    for (int support = 0; support < beam.supportCount(); support++) {
      moments.add(result.momentInLb(beam.supportAtIn(support)));
    }
    return moments;
  }

  /** The span in which a place lies; -1 on the left tail, the number of spans on the right one. */
  public int spanOf(double atIn) {
    if (atIn < beam.supportAtIn(0)) {
      return -1;
    }
    for (int span = 0; span < beam.spanCount(); span++) {
      if (atIn <= beam.supportAtIn(span + 1)) {
        return span;
      }
    }
    return beam.spanCount();
  }
}

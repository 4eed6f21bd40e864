package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Splice;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.SupportForces;
import org.scantling.quantity.FormulaLine;
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
 * @param cutContact the seat of the end of a piece, where it is cut over a support
 * @param strength what is checked of it
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
    Seat cutContact,
    BeamStrength strength,
    double ratio) {
  private static final double LAST_BITS = 1e-9;

  /** What keeps it from rolling over, once for all that bends it. */
  public List<FormulaLine> rolling() {
    return strength.stability().lines();
  }

  /** Bending between the supports. */
  public List<FormulaLine> sagging() {
    return strength.sagging().lines();
  }

  /** Bending over them, on what notch and sinks leave. */
  public List<FormulaLine> hogging() {
    return strength.hogging().lines();
  }

  /** Shear in the whole section, and beside a notch. */
  public List<FormulaLine> shear() {
    List<FormulaLine> lines = new ArrayList<>(strength.shear().lines());
    strength.notched().ifPresent(each -> lines.addAll(each.lines()));
    return lines;
  }

  /** Pressure on the seat that is pressed hardest. */
  public List<FormulaLine> bearing() {
    return (pressedHardest().atCut() ? strength.end() : strength.seat()).orElseThrow().lines();
  }

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

  /**
   * What presses hardest on its contact.
   *
   * @param support the support
   * @param towards the support at the other end of the piece that presses, where two pieces meet;
   *     the support itself where the beam runs on
   * @param loadLb what it presses
   */
  public record Pressed(int support, int towards, double loadLb, Seat contact) {
    public boolean atCut() {
      return towards != support;
    }

    private double ratio() {
      return loadLb / (contact.areaIn2() * contact.bearingFactor());
    }
  }

  /** The seat that is pressed hardest, square inch by square inch. */
  public Pressed pressedHardest() {
    SupportForces forces = all.onSupports();
    List<Integer> cuts = beam.cuts();
    List<Pressed> seats = new ArrayList<>();
    for (int support = 0; support < beam.supportCount(); support++) {
      if (cuts.contains(support)) {
        double leftLb = CutEnds.pressedLb(forces, support, true);
        double rightLb = CutEnds.pressedLb(forces, support, false);
        seats.add(new Pressed(support, support - 1, leftLb, cutContact));
        seats.add(new Pressed(support, support + 1, rightLb, cutContact));
      } else {
        seats.add(new Pressed(support, support, all.reactionLb(support), contact));
      }
    }
    Pressed most = seats.get(0);
    for (Pressed each : seats) {
      most = each.ratio() > most.ratio() * (1 + LAST_BITS) ? each : most;
    }
    return most;
  }

  /** The pieces that the beam is in, by the spans of each; one where it is whole. */
  public Splice pieces() {
    List<Integer> spans = new ArrayList<>();
    int from = 0;
    for (int cut : beam.cuts()) {
      spans.add(cut - from);
      from = cut;
    }
    spans.add(beam.spanCount() - from);
    return new Splice(spans);
  }
}

package org.scantling.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.scantling.quantity.Require;

/**
 * What does a beam of one size throughout, over two or more supports, do under its loads?
 *
 * <p>A header over its posts, or a crossbeam over its headers, with an overhang at either end or
 * none. The stiffness EI is taken as 1: reactions, shears and moments do not depend on it, and the
 * caller divides deflections by the real EI. The stiffness of the beam is taken apart once, when it
 * is made, and serves every load case; work grows in line with the number of supports.
 *
 * <p>Slender-beam theory (no shear deformation), supports that do not sink. The beam may be cut
 * over inner supports: its pieces meet there, each resting by itself and passing no moment on.
 *
 * <p>Source: direct stiffness method with the rotations at the supports as unknowns; any
 * strength-of-materials text, e.g. Gere, Mechanics of Materials, chapter on statically
 * indeterminate beams.
 *
 * <p>Worked number: supports at 0, 100 and 200 in on a beam of 200 in, 10 lb/in throughout: the
 * middle support carries 5/4 · 10 · 100 = 1250 lb.
 */
public final class ContinuousBeam {
  private static final double PLACE_SLACK_RATIO = 1e-9;

  private final double lengthIn;
  private final double[] supportsIn;
  private final BeamTurns turns;
  private final ProfileFactor stiffness;

  private ContinuousBeam(double lengthIn, double[] supportsIn, BeamTurns turns) {
    this.lengthIn = lengthIn;
    this.supportsIn = supportsIn;
    this.turns = turns;
    this.stiffness = new ProfileFactor(turns.stiffnessRows(supportsIn));
  }

  /**
   * A beam over its supports.
   *
   * @param lengthIn length from tip to tip, in, above zero
   * @param supportsIn places of the supports from the left tip, in, ascending, two or more, all
   *     between the tips (a support may stand at a tip: then there is no overhang)
   * @return the beam, ready for any number of load cases
   * @throws IllegalArgumentException if there are fewer than two supports, or they are out of order
   *     or off the beam
   */
  public static ContinuousBeam of(double lengthIn, double... supportsIn) {
    Require.positive("beam length", lengthIn, "in");
    if (supportsIn.length < 2) {
      throw new IllegalArgumentException(
          "a beam on " + supportsIn.length + " support(s) can turn over; it must have 2 or more");
    }
    double[] places = new double[supportsIn.length];
    double slack = PLACE_SLACK_RATIO * lengthIn;
    for (int i = 0; i < places.length; i++) {
      places[i] = onBeam("support " + (i + 1), supportsIn[i], lengthIn);
      if (i > 0 && places[i] - places[i - 1] <= slack) {
        throw new IllegalArgumentException(
            "support " + (i + 1) + " at " + places[i] + " in must stand beyond support " + i);
      }
    }
    return new ContinuousBeam(lengthIn, places, new BeamTurns(places.length, Set.of()));
  }

  /**
   * The same beam in pieces that meet over some of its supports.
   *
   * <p>Worked number: supports at 0, 100 and 200 in, cut over the middle one, 10 lb/in throughout:
   * two simple spans, so the middle support carries 1000 lb and the moment over it is 0.
   *
   * @param supports inner supports over which the beam is cut, counted from 0; none for no cut
   * @throws IllegalArgumentException if one of them is no inner support
   */
  public ContinuousBeam cutOver(Set<Integer> supports) {
    return new ContinuousBeam(lengthIn, supportsIn, new BeamTurns(supportsIn.length, supports));
  }

  /** Supports over which two pieces meet, ascending, counted from 0. */
  public List<Integer> cuts() {
    return turns.cuts();
  }

  private static double onBeam(String what, double placeIn, double lengthIn) {
    double slack = PLACE_SLACK_RATIO * lengthIn;
    if (!(placeIn >= -slack && placeIn <= lengthIn + slack)) {
      throw new IllegalArgumentException(
          what + " at " + placeIn + " in must be on the beam, 0 to " + lengthIn + " in");
    }
    double inside = Math.max(0, Math.min(placeIn, lengthIn));
    return lengthIn - inside <= slack ? lengthIn : inside <= slack ? 0 : inside;
  }

  public double lengthIn() {
    return lengthIn;
  }

  public int supportCount() {
    return supportsIn.length;
  }

  public int spanCount() {
    return supportsIn.length - 1;
  }

  /** Place of a support, counted from 0, inches from the left tip. */
  public double supportAtIn(int support) {
    return supportsIn[support];
  }

  /** An even load over the whole beam, lb/in, downwards positive. */
  public BeamLoad everywhere(double forceLbPerIn) {
    return new BeamLoad.Uniform(0, lengthIn, forceLbPerIn);
  }

  /**
   * One load case by itself.
   *
   * @param loads the loads that act together; none at all is allowed
   * @throws IllegalArgumentException if a load lies off the beam
   */
  public BeamResult solve(BeamLoad... loads) {
    return solve(List.of(List.of(loads))).get(0);
  }

  /**
   * Several load cases over the same stations, so that they can be combined.
   *
   * @param cases each the loads that act together
   * @return a result for each case, in the same order
   * @throws IllegalArgumentException if a load lies off the beam
   */
  public List<BeamResult> solve(List<List<BeamLoad>> cases) {
    Stations stations = Stations.of(anchors(), breaks(cases));
    int[] supports = new int[supportsIn.length];
    for (int i = 0; i < supports.length; i++) {
      supports[i] = stations.nearest(supportsIn[i]);
    }
    List<BeamResult> results = new ArrayList<>(cases.size());
    for (List<BeamLoad> loads : cases) {
      LineLoad laid = new LineLoad(stations);
      loads.forEach(laid::add);
      results.add(new BeamSolution(stiffness, turns, laid, supports).solve());
    }
    return List.copyOf(results);
  }

  private double[] anchors() {
    double[] anchors = new double[supportsIn.length + 2];
    int used = 0;
    if (supportsIn[0] > 0) {
      anchors[used++] = 0;
    }
    for (double support : supportsIn) {
      anchors[used++] = support;
    }
    if (supportsIn[supportsIn.length - 1] < lengthIn) {
      anchors[used++] = lengthIn;
    }
    return Arrays.copyOf(anchors, used);
  }

  private double[] breaks(List<List<BeamLoad>> cases) {
    int total = 0;
    for (List<BeamLoad> loads : cases) {
      total += 2 * loads.size();
    }
    double[] breaks = new double[total];
    int used = 0;
    for (List<BeamLoad> loads : cases) {
      for (BeamLoad load : loads) {
        if (load instanceof BeamLoad.Uniform uniform) {
          breaks[used++] = onBeam("uniform load start", uniform.fromIn(), lengthIn);
          breaks[used++] = onBeam("uniform load end", uniform.toIn(), lengthIn);
        } else if (load instanceof BeamLoad.Point point) {
          breaks[used++] = onBeam("point load", point.atIn(), lengthIn);
        }
      }
    }
    return Arrays.copyOf(breaks, used);
  }
}

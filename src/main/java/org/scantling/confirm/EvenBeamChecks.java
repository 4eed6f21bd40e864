package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.Shear;

/**
 * A beam over equal spans without tails, loaded evenly or by one person: what a span table is
 * about. The checks are those of every crossbeam and header.
 */
public final class EvenBeamChecks {
  private final BeamChecks checks;
  private final Beam beam;

  /**
   * @param role prefix of the check ids, crossbeam or header
   * @param spanIn centre to centre of neighbouring supports
   * @param spanCount spans in a row
   * @param notchIn depth of the recess over each support
   * @param seatIn length of bearing on each support, 0 where crushing is not checked
   * @param unbracedIn longest stretch without anything that stops it rolling over
   */
  public record Beam(
      String role,
      double spanIn,
      int spanCount,
      double notchIn,
      double seatIn,
      double unbracedIn) {}

  /**
   * @param deadLbPerIn permanent load besides the beam's own weight
   * @param liveLbPerIn load that comes and goes
   * @param personLb one person at the worst place instead, 0 for none
   */
  public record Load(double deadLbPerIn, double liveLbPerIn, double personLb) {}

  public EvenBeamChecks(Beam beam, Load load, Limits limits, Function<String, Source> sources) {
    BeamChecks.Seating seating =
        new BeamChecks.Seating(
            beam.role(),
            beam.notchIn(),
            0,
            beam.seatIn(),
            Double.POSITIVE_INFINITY,
            beam.seatIn() > 0,
            0,
            beam.unbracedIn(),
            1);
    this.checks = new BeamChecks(loaded(beam, load), seating, limits, sources);
    this.beam = beam;
  }

  /** Every check of that stock size, each with its worst combination. */
  public List<Checked> of(Material material) {
    return checks.of(material);
  }

  /**
   * The same with the load within one depth of each support left out of the shear, as the standard
   * allows for an even load on a simple span without notch.
   *
   * <p>Source: NDS, 2018, 3.4.3.1
   */
  public List<Checked> shearedOneDepthAway(Material material) {
    double atSupportLb = beam.spanIn() / 2;
    double awayLb = Shear.oneDepthAwayLb(atSupportLb, 1, material.section().depthIn());
    return of(material).stream()
        .map(each -> each.id().endsWith(".shear") ? eased(each, awayLb / atSupportLb) : each)
        .toList();
  }

  private static Checked eased(Checked shear, double ratio) {
    return new Checked(
        shear.id(),
        shear.role(),
        shear.combination(),
        shear.loadDurationFactor(),
        new Check(shear.check().demand() * ratio, shear.check().capacity()),
        shear.unit(),
        shear.source());
  }

  private static LoadedBeam loaded(Beam beam, Load load) {
    double[] supports = new double[beam.spanCount() + 1];
    for (int i = 0; i < supports.length; i++) {
      supports[i] = i * beam.spanIn();
    }
    List<BeamLoad> none = List.of();
    return new LoadedBeam(
        ContinuousBeam.of(supports[supports.length - 1], supports),
        new BeamLoads(
            List.of(even(supports[0], supports[supports.length - 1], load.deadLbPerIn())),
            none,
            bySpan(supports, load.liveLbPerIn()),
            people(beam, supports, load.personLb()),
            Collections.nCopies(beam.spanCount(), none),
            none,
            none));
  }

  private static List<List<BeamLoad>> bySpan(double[] supports, double forceLbPerIn) {
    List<List<BeamLoad>> spans = new ArrayList<>();
    for (int i = 1; i < supports.length; i++) {
      spans.add(List.of(even(supports[i - 1], supports[i], forceLbPerIn)));
    }
    return spans;
  }

  private static BeamLoad even(double fromIn, double toIn, double forceLbPerIn) {
    return new BeamLoad.Uniform(fromIn, toIn, forceLbPerIn);
  }

  /** Beside a support is an inch inside the edge of its seat. */
  private static List<BeamLoad> people(Beam beam, double[] supports, double personLb) {
    double lengthIn = supports[supports.length - 1];
    return personLb > 0
        ? BeamLoads.points(PersonPlaces.on(lengthIn, supports, beam.seatIn() / 2 + 1), personLb)
        : List.of();
  }
}

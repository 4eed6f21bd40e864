package org.scantling.confirm;

import java.util.List;
import java.util.function.Function;
import org.scantling.mechanics.BeamResult;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bearing;
import org.scantling.timber.Bending;
import org.scantling.timber.Deflection;
import org.scantling.timber.EndNotch;
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Seat;
import org.scantling.timber.Shear;

/**
 * The checks that crossbeams and headers share: bending between supports and over the notched
 * seats, rolling over, shear whole and at the notch, crushing at the seats, sag of spans and tails.
 */
final class BeamChecks {
  private final LoadedBeam loaded;
  private final Seating seating;
  private final Limits limits;
  private final Function<String, Source> sources;

  /** The sag of each span under a load; the permanent load comes with every combination. */

  /**
   * How the beam sits on its supports.
   *
   * @param role prefix of the check ids
   * @param notchIn depth of the recess in the beam's underside
   * @param lengthIn along the beam, at each support
   * @param breadthIn breadth of the support; a broader beam bears on no more
   * @param bears false where bolts carry it instead of a seat
   * @param tailIn from the last support to the tip
   * @param unbracedIn longest stretch without anything that stops it rolling over
   */
  record Seating(
      String role,
      double notchIn,
      double lengthIn,
      double breadthIn,
      boolean bears,
      double tailIn,
      double unbracedIn) {

    /** The contact of a beam of that breadth at its support next to the end. */
    Seat under(double beamIn) {
      return new Seat(Math.min(beamIn, breadthIn), lengthIn, Math.max(0, tailIn - lengthIn / 2));
    }
  }

  BeamChecks(LoadedBeam loaded, Seating seating, Limits limits, Function<String, Source> sources) {
    this.loaded = loaded;
    this.seating = seating;
    this.limits = limits;
    this.sources = sources;
  }

  List<Checked> of(Material material) {
    WorstChecks worst = new WorstChecks(seating.role(), limits, sources);
    Sags permanent = null;
    for (BeamCase each : loaded.cases(material.weightLbPerIn())) {
      AdjustedValues values = material.lasting(limits.duration().of(each.combination()));
      strength(worst, each, material, values);
      if (each.spread()) {
        // Nearly all combinations share one permanent load; its sag is worked once.
        permanent = Sags.of(each.permanent(), loaded.beam(), permanent);
        sag(worst, each, permanent, values.elasticity().psi() * stiffIn4(material));
      }
    }
    return worst.list();
  }

  private static double stiffIn4(Material material) {
    return material.whole().secondMomentIn4();
  }

  private void strength(
      WorstChecks worst, BeamCase each, Material material, AdjustedValues values) {
    Rectangle whole = material.whole();
    Rectangle seat = whole.notched(seating.notchIn());
    BeamStability stability =
        BeamStability.of(
            material.section(),
            BeamLoading.UNIFORM.effectiveLengthIn(
                seating.unbracedIn(), material.section().depthIn()),
            values);
    BeamResult all = each.all();
    double sagging = Math.max(0, all.mostSagging().amount());
    double hogging = Math.max(0, -all.mostHogging().amount());
    double shearLb = Math.abs(all.largestShear().amount());
    worst.add(
        "bending",
        each.combination(),
        Bending.of(sagging, whole, values, stability).check(),
        Unit.PSI);
    worst.add(
        "seat-bending",
        each.combination(),
        Bending.of(hogging, seat, values, stability).check(),
        Unit.PSI);
    worst.addLasting("stability", each.combination(), stability.check(), Unit.RATIO);
    worst.add(
        "shear", each.combination(), Shear.of(shearLb, whole, values.shear()).check(), Unit.PSI);
    if (seating.notchIn() > 0) {
      worst.add(
          "notched-shear",
          each.combination(),
          NotchedShear.onTensionFace(
                  shearLb, whole, new EndNotch(seating.notchIn(), 0), values.shear())
              .check(),
          Unit.POUND);
    }
    if (seating.bears()) {
      Seat contact = seating.under(whole.breadthIn());
      worst.addLasting(
          "bearing",
          each.combination(),
          Bearing.across(mostDownLb(all), contact, values.bearing()).check(),
          Unit.PSI);
    }
  }

  private void sag(WorstChecks worst, BeamCase each, Sags permanent, double stiffness) {
    Sags passing = Sags.of(each.passing(), loaded.beam(), null);
    for (int span = 0; span < loaded.beam().spanCount(); span++) {
      double spanIn = loaded.beam().supportAtIn(span + 1) - loaded.beam().supportAtIn(span);
      Deflection deflection = deflection(permanent.span(span), passing.span(span), stiffness);
      add(worst, each, "deflection", deflection, spanIn);
    }
    if (seating.tailIn() > 0) {
      Deflection tip = deflection(permanent.tip(), passing.tip(), stiffness);
      add(worst, each, "tail-deflection", tip, 2 * seating.tailIn());
    }
  }

  private void add(
      WorstChecks worst, BeamCase each, String name, Deflection deflection, double spanIn) {
    worst.addLasting(
        name + "-total",
        each.combination(),
        deflection.check(spanIn, limits.totalDeflectionDivisor()),
        Unit.INCH);
    worst.addLasting(
        name + "-live",
        each.combination(),
        new Check(deflection.passingIn(), spanIn / limits.passingDeflectionDivisor()),
        Unit.INCH);
  }

  private Deflection deflection(double permanentLbIn3, double passingLbIn3, double stiffness) {
    return new Deflection(
        permanentLbIn3 / stiffness, passingLbIn3 / stiffness, limits.creepFactor());
  }

  private static double mostDownLb(BeamResult result) {
    double most = 0;
    for (double reaction : result.reactionsLb()) {
      most = Math.max(most, reaction);
    }
    return most;
  }
}

package org.scantling.confirm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedStress;
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

  /**
   * How the beam sits on its supports.
   *
   * @param role prefix of the check ids
   * @param notchIn depth of the recess in the beam's underside
   * @param sunkIn depth of what is bored into its top over the supports
   * @param lengthIn along the beam, at each support
   * @param breadthIn breadth of the support; a broader beam bears on no more
   * @param bears false where bolts carry it instead of a seat
   * @param tailIn from the last support to the tip
   * @param unbracedIn longest stretch without anything that stops it rolling over
   * @param shareRatio of what a support carries, on the harder pressed seat, where it has two
   */
  record Seating(
      String role,
      double notchIn,
      double sunkIn,
      double lengthIn,
      double breadthIn,
      boolean bears,
      double tailIn,
      double unbracedIn,
      double shareRatio) {

    /** The contact of a beam of that breadth at its support next to the end. */
    Seat under(double beamIn) {
      return new Seat(Math.min(beamIn, breadthIn), lengthIn, Math.max(0, tailIn - lengthIn / 2));
    }

    /** The contact of the end of a piece, on its half of the support. */
    Seat underCut(double beamIn) {
      return new Seat(Math.min(beamIn, breadthIn), lengthIn / 2, 0);
    }
  }

  BeamChecks(LoadedBeam loaded, Seating seating, Limits limits, Function<String, Source> sources) {
    this.loaded = loaded;
    this.seating = seating;
    this.limits = limits;
    this.sources = sources;
  }

  List<Checked> of(Material material) {
    CheckEnvelope worst = new CheckEnvelope(seating.role(), limits, sources);
    loaded
        .demands(material.weightLbPerIn())
        .forEach((combination, demand) -> strength(worst, combination, demand, material));
    sags(worst, material);
    return worst.list();
  }

  private BeamDemand demand(BeamCase each) {
    return BeamDemand.of(each.all(), loaded.beam().cuts());
  }

  /** Every way in which the loads of a combination may lie, with how hard a check is worked. */
  Stream<BeamScene> scenes(BeamAsk ask, LoadCombination combination, Material material) {
    Stream<BeamCase> cases =
        ask == BeamAsk.LIFT && combination == LoadCombination.UPLIFT
            ? Stream.of(loaded.atCorner(material.weightLbPerIn()))
            : loaded.cases(material.weightLbPerIn()).stream();
    return cases
        .filter(each -> each.combination() == combination)
        .map(each -> scene(each, ratio(ask, each, material), material));
  }

  private BeamScene scene(BeamCase each, double ratio, Material material) {
    return new BeamScene(
        loaded.beam(),
        each.passing().lying(),
        each.all(),
        each.permanent(),
        each.passing().result(),
        seating.under(material.whole().breadthIn()),
        seating.underCut(material.whole().breadthIn()),
        strength(each.combination(), demand(each), material),
        ratio);
  }

  private double ratio(BeamAsk ask, BeamCase each, Material material) {
    String id = seating.role() + "." + ask.check();
    if (ask == BeamAsk.SUPPORT) {
      return Math.max(0, Arrays.stream(each.all().reactionsLb()).max().orElse(0));
    }
    if (ask == BeamAsk.LIFT) {
      return Math.max(0, -Arrays.stream(each.all().reactionsLb()).min().orElse(0));
    }
    CheckEnvelope worst = new CheckEnvelope(seating.role(), limits, sources);
    if (ask == BeamAsk.SPAN_SAG) {
      if (each.passing().spread()) {
        Sags still = Sags.of(each.permanent(), loaded.beam());
        sag(worst, each.combination(), still, each.passing().sags(), material);
      }
    } else {
      strength(worst, each.combination(), demand(each), material);
    }
    return worst.list().stream()
        .filter(check -> check.id().equals(id))
        .mapToDouble(check -> check.check().ratio())
        .findFirst()
        .orElse(0);
  }

  private void strength(
      CheckEnvelope worst, LoadCombination combination, BeamDemand demand, Material material) {
    BeamStrength strength = strength(combination, demand, material);
    worst.add("bending", combination, strength.sagging().check(), Unit.PSI);
    worst.add("seat-bending", combination, strength.hogging().check(), Unit.PSI);
    worst.addLasting("stability", combination, strength.stability().check(), Unit.RATIO);
    worst.add("shear", combination, strength.shear().check(), Unit.PSI);
    strength
        .notched()
        .ifPresent(left -> worst.add("notched-shear", combination, left.check(), Unit.POUND));
    strength
        .seat()
        .ifPresent(seat -> worst.addLasting("bearing", combination, seat.check(), Unit.PSI));
    strength
        .end()
        .ifPresent(end -> worst.addLasting("bearing", combination, end.check(), Unit.PSI));
  }

  private BeamStrength strength(LoadCombination combination, BeamDemand demand, Material material) {
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    BeamStability stability = stability(material, values);
    Rectangle whole = material.whole();
    Rectangle seat = whole.notched(seating.notchIn() + seating.sunkIn());
    return new BeamStrength(
        stability,
        Bending.of(demand.saggingInLb(), whole, values, stability),
        Bending.of(demand.hoggingInLb(), seat, values, stability),
        Shear.of(demand.shearLb(), whole, values.shear()),
        notched(demand.shearLb(), whole, values.shear()),
        seating.bears() ? Optional.of(seat(demand, whole, values)) : Optional.empty(),
        seating.bears() && !loaded.beam().cuts().isEmpty()
            ? Optional.of(end(demand, whole, values))
            : Optional.empty());
  }

  private Bearing seat(BeamDemand demand, Rectangle whole, AdjustedValues values) {
    Seat contact = seating.under(whole.breadthIn());
    return Bearing.across(seating.shareRatio() * demand.seatLb(), contact, values.bearing());
  }

  private Bearing end(BeamDemand demand, Rectangle whole, AdjustedValues values) {
    Seat half = seating.underCut(whole.breadthIn());
    return Bearing.across(demand.cutSeatLb(), half, values.bearing());
  }

  private Optional<NotchedShear> notched(
      double shearLb, Rectangle whole, AdjustedStress allowable) {
    if (!(seating.notchIn() > 0)) {
      return Optional.empty();
    }
    EndNotch notch = new EndNotch(seating.notchIn(), 0);
    return Optional.of(NotchedShear.onTensionFace(shearLb, whole, notch, allowable));
  }

  private BeamStability stability(Material material, AdjustedValues values) {
    Rectangle ply = material.section();
    return BeamStability.of(
        ply, BeamLoading.UNIFORM.effective(seating.unbracedIn(), ply.depthIn()), values);
  }

  private void sags(CheckEnvelope worst, Material material) {
    // All combinations but the lifting one share one permanent load; its sag is worked once.
    Sags permanent = still(LoadCombination.DEAD_ALONE, material);
    loaded
        .passingSags()
        .forEach(
            (combination, passing) -> {
              boolean lifts = combination == LoadCombination.UPLIFT;
              Sags still = lifts ? still(combination, material) : permanent;
              sag(worst, combination, still, passing, material);
            });
  }

  private Sags still(LoadCombination combination, Material material) {
    return Sags.of(loaded.permanent(combination, material.weightLbPerIn()), loaded.beam());
  }

  private void sag(
      CheckEnvelope worst,
      LoadCombination combination,
      Sags permanent,
      Sags passing,
      Material material) {
    double stiffness = material.lasting(1).elasticity().psi() * material.whole().secondMomentIn4();
    for (int span = 0; span < loaded.beam().spanCount(); span++) {
      double spanIn = loaded.beam().supportAtIn(span + 1) - loaded.beam().supportAtIn(span);
      Deflection sag = deflection(permanent.span(span), passing.span(span), stiffness);
      worst.addLasting("deflection-total", combination, total(sag, spanIn), Unit.INCH);
      worst.addLasting("deflection-live", combination, live(sag, spanIn), Unit.INCH);
    }
    if (seating.tailIn() > 0) {
      // Twice a tail's length counts as span.
      double spanIn = 2 * seating.tailIn();
      for (int end = 0; end < Sags.TIPS; end++) {
        Deflection tip = deflection(permanent.tip(end), passing.tip(end), stiffness);
        worst.addLasting("tail-deflection-total", combination, total(tip, spanIn), Unit.INCH);
        worst.addLasting("tail-deflection-live", combination, live(tip, spanIn), Unit.INCH);
      }
    }
  }

  private Check total(Deflection deflection, double spanIn) {
    return deflection.check(spanIn, limits.totalDeflectionDivisor());
  }

  private Check live(Deflection deflection, double spanIn) {
    return new Check(deflection.passingIn(), spanIn / limits.passingDeflectionDivisor());
  }

  private Deflection deflection(double permanentLbIn3, double passingLbIn3, double stiffness) {
    return new Deflection(
        permanentLbIn3 / stiffness, passingLbIn3 / stiffness, limits.creepFactor());
  }
}

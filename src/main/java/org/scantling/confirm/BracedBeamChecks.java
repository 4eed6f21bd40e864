package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.MemberResult;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Bearing;
import org.scantling.timber.EndNotch;
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Seat;

/**
 * What the braces ask of the beam they hold on to: bending between the braces together with the
 * push along it, shear beside the post, and pressure on the seat where a brace pulls it down.
 */
public final class BracedBeamChecks {
  private final BracedPlane plane;
  private final BracedWay way;
  private final Beam beam;
  private final CheckEnvelope worst;
  private final Limits limits;

  /**
   * @param material the beam
   * @param notchIn depth of the recess over its supports
   * @param seatIn length of the seat along the beam; 0 where bolts carry it
   * @param tailIn from the centre of the last support to the tip
   * @param unbracedIn longest stretch without anything that stops it rolling over
   * @param legIn of the braces that hold on to it at half its depth
   * @param shareRatio of what presses over a post, on the harder pressed of two seats
   */
  private record Beam(
      Material material,
      double notchIn,
      double seatIn,
      double tailIn,
      double unbracedIn,
      double legIn,
      double shareRatio) {}

  private BracedBeamChecks(BracedWay way, Beam beam, CheckEnvelope worst, Limits limits) {
    this.plane = way.plane();
    this.way = way;
    this.beam = beam;
    this.worst = worst;
    this.limits = limits;
  }

  /** The crossbeams that stand over posts. */
  public static BracedBeamChecks ofCrossbeam(
      BracedWalk walk, Limits limits, Function<String, Source> sources) {
    Beam beam =
        new Beam(
            walk.timbers().crossbeam(),
            walk.geometry().crossbeams().notchIn(),
            walk.geometry().headers().breadthIn(),
            walk.geometry().crossbeamTailIn(),
            walk.geometry().plan().rowSpacingIn(),
            walk.timbers().legIn(),
            walk.geometry().headers().paired() ? limits.pairShareRatio() : 1);
    CheckEnvelope worst = new CheckEnvelope("crossbeam", limits, sources);
    return new BracedBeamChecks(walk.across(), beam, worst, limits);
  }

  /** The headers. */
  public static BracedBeamChecks ofHeader(
      BracedWalk walk, Limits limits, Function<String, Source> sources) {
    boolean paired = walk.geometry().headers().paired();
    Beam beam =
        new Beam(
            walk.timbers().header(),
            walk.geometry().headers().notchIn(),
            paired ? 0 : walk.geometry().posts().breadthIn(),
            walk.geometry().headerTailIn(),
            walk.geometry().plan().bayIn(),
            walk.timbers().legIn(),
            1);
    CheckEnvelope worst = new CheckEnvelope("header", limits, sources);
    return new BracedBeamChecks(walk.along(), beam, worst, limits);
  }

  /** Every check of the beam as tried, each with its worst combination. */
  public List<Checked> list() {
    Map<LoadCombination, Sections> sections = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      Sections ply = sections.computeIfAbsent(each.combination(), this::sections);
      AdjustedValues values = ply.whole().values();
      for (String piece : each.reach().pieces()) {
        piece(each.combination(), each.all().member(piece), ply.whole());
      }
      for (String piece : each.reach().betweenTails()) {
        shear(each.combination(), each.all().member(piece), values);
      }
      if (beam.seatIn() > 0) {
        for (int post : each.reach().posts()) {
          notch(each, post, ply.notched());
          seat(each, post, values);
        }
      }
    }
    return worst.list();
  }

  /** One ply in one combination: all of it, and what the recess over a post leaves. */
  private record Sections(BracedMember whole, BracedMember notched) {}

  private Sections sections(LoadCombination combination) {
    Rectangle ply = beam.material().section();
    AdjustedValues values = beam.material().lasting(limits.duration().of(combination));
    BracedMember whole =
        new BracedMember(ply, beam.unbracedIn(), limits.straightnessFactor(), values);
    return new Sections(whole, whole.left(ply.notched(beam.notchIn())));
  }

  private void piece(LoadCombination combination, MemberResult piece, BracedMember member) {
    int plies = beam.material().plies();
    double momentInLb = piece.largestMoment().amount() / plies;
    double axialLb = largest(piece.mostTension().amount(), piece.mostCompression().amount());
    worst.add(
        "brace-bending",
        combination,
        member.combined(new BracedMember.Forces(axialLb / plies, momentInLb, 0, 0)),
        Unit.RATIO);
  }

  /** Shear at the recess over the posts, and past the bolts of the braces at half the depth. */
  private void shear(LoadCombination combination, MemberResult piece, AdjustedValues values) {
    Rectangle ply = beam.material().section();
    double shearLb = Math.abs(piece.largestShear().amount()) / beam.material().plies();
    if (beam.notchIn() > 0) {
      EndNotch notch = new EndNotch(beam.notchIn(), 0);
      worst.add(
          "brace-shear",
          combination,
          NotchedShear.onTensionFace(shearLb, ply, notch, values.shear()).check(),
          Unit.POUND);
    }
    NotchedShear.FastenerPlace bolt =
        new NotchedShear.FastenerPlace(ply.depthIn() / 2, beam.tailIn() + beam.legIn());
    worst.add(
        "brace-shear",
        combination,
        NotchedShear.atFasteners(shearLb, ply, bolt, values.shear()).check(),
        Unit.POUND);
  }

  /** Over the post the beam has its recess, and only bending there. */
  private void notch(BracedCase each, int post, BracedMember member) {
    MemberResult beyond = each.all().member(plane.beyond(post));
    double momentInLb = beyond.momentInLb(0) / beam.material().plies();
    Check bent = member.bending(momentInLb).check();
    worst.add("brace-bending", each.combination(), new Check(bent.ratio(), 1), Unit.RATIO);
  }

  private void seat(BracedCase each, int post, AdjustedValues values) {
    double pressedLb = beam.shareRatio() * (-each.on(post).headPullLb() - each.onPostLb());
    double breadthIn = beam.material().whole().breadthIn();
    // Where pieces meet, one end may have to hold down all that the braces pull.
    Seat contact =
        plane.cutOver(post)
            ? new Seat(breadthIn, beam.seatIn() / 2, 0)
            : new Seat(breadthIn, beam.seatIn(), beam.tailIn());
    worst.addLasting(
        "brace-bearing",
        each.combination(),
        Bearing.across(Math.max(0, pressedLb), contact, values.bearing()).check(),
        Unit.PSI);
  }

  private static double largest(double tensionLb, double compressionLb) {
    return tensionLb > -compressionLb ? tensionLb : compressionLb;
  }
}

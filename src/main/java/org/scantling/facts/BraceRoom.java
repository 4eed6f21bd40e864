package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.TopLines;
import org.scantling.confirm.BracedWalk;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.design.KneeBraces;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Worked;

/** Where the knee braces of a set of answers lie, and how long their legs can be there. */
final class BraceRoom {
  /** What is left between a head or a foot and where it would meet another, told by the tape. */
  private static final double APART_IN = 2 * BracedWalk.LEAST_APART_IN;

  private final CheckContext context;
  private final Geometry geometry;

  BraceRoom(CheckContext context) {
    this.context = context;
    this.geometry = context.geometry();
  }

  /** Braces with that leg; the depth of the brace is not known in the first pass. */
  static KneeBraces braces(CheckContext context, double legIn) {
    double depthIn = new BraceRoom(context).depthIn();
    return new KneeBraces(TopLines.of(context), legIn, depthIn, feetApartIn(context));
  }

  /** As far apart as the bolts of one row, whatever their number. */
  private static double feetApartIn(CheckContext context) {
    double apartIn = context.tables().factor("bolt-geometry.row.parallel.full").amount();
    return context
        .answers()
        .find(BRACE_JOINT)
        .map(answer -> context.tables().joints().row(answer.option()))
        .map(
            joint ->
                apartIn
                    * context.tables().fastener(joint.fastener()).diameterIn()
                    * (1 + (joint.count() - 1) * Math.sqrt(0.5)))
        .orElse(0.0);
  }

  /** The room there is, the bay that has the least where bays differ, and that there is none. */
  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    Worked room = leg();
    facts.add(room);
    Bays along = geometry.plan().along();
    if (!along.even()) {
      Measure shortest = Measure.inches(along.shortestIn());
      facts.add(
          ByGeometry.worked(
              "bay.shortest", BRACE_LEG, along.shortestIn(), Evidence.saw("bay", shortest)));
    }
    if (context.onBrackets() && sized() && room.number() < BracedWalk.LEAST_APART_IN) {
      facts.add(ByGeometry.worked("brace.no-room", BRACE_SIZE, room.number(), Evidence.none()));
    }
    return facts;
  }

  /**
   * The leg at which two braces meet, or one reaches the ground. Two along the walk in a bay lie on
   * two faces of the row and pass each other; two across it lie on one face of their crossbeam, up
   * to the far edge of it; and the inner one along the walk rises up to the one across it at the
   * next post.
   */
  private Worked leg() {
    double bayIn = geometry.plan().along().shortestIn();
    double rowsIn = geometry.plan().rowSpacingIn();
    double headIn = geometry.crossbeams().depthIn() / 2 + depthIn() * Math.sqrt(0.5);
    double heightIn = geometry.headerTopIn() - geometry.headers().depthIn() / 2;
    double passesIn = braces(context, 0).longestLegIn(thicknessIn());
    double alongIn = Math.min(bayIn / 2, heightIn) - APART_IN;
    double roomIn = Math.min(alongIn, Math.min(rowsIn / 2 - headIn, passesIn));
    return ByGeometry.worked(
        "brace.leg-room",
        BRACE_LEG,
        Math.max(0, roomIn),
        Evidence.saw("bay", Measure.inches(bayIn))
            .and("rows", Measure.inches(rowsIn))
            .and("head", Measure.inches(headIn))
            .and("height", Measure.inches(heightIn))
            .and("apart", Measure.inches(APART_IN))
            .and("passes", Measure.inches(Math.max(0, passesIn))));
  }

  private double depthIn() {
    return sized() ? context.stock().row(context.answers().option(BRACE_SIZE)).widthIn() : 0;
  }

  private double thicknessIn() {
    return sized() ? context.stock().row(context.answers().option(BRACE_SIZE)).thicknessIn() : 0;
  }

  private boolean sized() {
    return context.answers().has(BRACE_SIZE);
  }
}

package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.KneeBraces;
import org.scantling.design.TopLine;
import org.scantling.sayings.Sayings;

/** What lies at a post elsewhere than one would look for it, and just where. */
final class Spots {
  private static final Sayings SAYINGS = Sayings.of("set-out");

  private final Built built;
  private final TopLine top;
  private final Tape tape;

  Spots(Built built) {
    this.built = built;
    this.top = built.top();
    this.tape = built.tape();
  }

  List<SetOut.Spot> all() {
    List<SetOut.Spot> spots = new ArrayList<>();
    together(spots, (row, post) -> step(post));
    together(spots, (row, post) -> shifted(post));
    if (built.railsFromLine() && !built.railsLevel()) {
      housings(spots);
    }
    if (built.has("brace")) {
      together(spots, (row, post) -> across(post));
      for (int towards = 1; towards >= -1; towards -= 2) {
        int way = towards;
        together(spots, (row, post) -> along(post, way));
      }
    }
    return spots;
  }

  /** What lies at a post of a row. */
  private interface At {
    Optional<SetOut.Spot> post(int row, int post);
  }

  /** What is told of several posts alike is told once. */
  private void together(List<SetOut.Spot> spots, At at) {
    Map<SetOut.Spot, List<String>> posts = new LinkedHashMap<>();
    for (int post = 0; post < top.posts(); post++) {
      for (int row = 0; row < 2; row++) {
        String name = Stakes.name(row, post);
        at.post(row, post)
            .ifPresent(spot -> posts.computeIfAbsent(spot, key -> new ArrayList<>()).add(name));
      }
    }
    posts.forEach(
        (spot, names) ->
            spots.add(new SetOut.Spot(String.join(", ", names), spot.what(), spot.measures())));
  }

  private SetOut.Named named(String name, double inches) {
    return new SetOut.Named(SAYINGS.say(name), tape.nearest(inches));
  }

  /** A saying that names the end of the walk that something lies toward. */
  private static String toward(String what, double sign) {
    return SAYINGS.say(what, "post", SAYINGS.say(sign > 0 ? "post.last" : "post.first"));
  }

  private Optional<SetOut.Spot> step(int post) {
    if (!top.stepsAt(post)) {
      return Optional.empty();
    }
    double seatIn = top.stepIn(post) + built.geometry().headers().notchIn();
    return built.paired()
        ? spot(SAYINGS.say("step.boards"), named("step.boards-edge", top.stepIn(post)))
        : spot(SAYINGS.say("step.hung"), named("step.hung-seat", seatIn));
  }

  private Optional<SetOut.Spot> shifted(int post) {
    double shiftIn = new Crossbeams(built).shiftIn(post);
    boolean stands = built.geometry().crossbeams().perBay() > 0;
    if (shiftIn == 0 || !stands) {
      return Optional.empty();
    }
    String kind = built.geometry().crossbeams().doubled() ? "shifted-pair." : "shifted.";
    return spot(
        toward(kind + (built.has("brace") ? "braced" : "stepped"), shiftIn),
        named(kind + "center", Math.abs(shiftIn)));
  }

  /** Where rails fall or step, the housings of every post are marked from the level line. */
  private void housings(List<SetOut.Spot> spots) {
    Posts posts = new Posts(built);
    for (int towards = 1; towards >= -1; towards -= 2) {
      int way = towards;
      together(
          spots,
          (row, post) ->
              posts.housing(row, post, way).flatMap(each -> housing(row, post, way, each)));
    }
  }

  private Optional<SetOut.Spot> housing(int row, int post, int towards, Recess housing) {
    double footIn = top.footIn(row, post) - built.shop("setout.level-line");
    return spot(
        toward("housing", towards),
        overLine("lower", footIn + housing.fromIn()),
        overLine("upper", footIn + housing.toIn()));
  }

  private SetOut.Named overLine(String edge, double overIn) {
    return named("housing-edge." + edge + (overIn < 0 ? "-below" : "-above"), Math.abs(overIn));
  }

  private Optional<SetOut.Spot> across(int post) {
    KneeBraces braces = built.braces();
    double footUpIn = new Braces(built).headAcrossUpIn(post) - braces.legIn();
    return spot(
        toward(
            cutsBoard(footUpIn, post) ? "brace.across-let-in" : "brace.across",
            KneeBraces.side(top)),
        named("brace.foot", top.topIn(post) - footUpIn),
        named("brace.head-from-row", braces.legIn()));
  }

  /** The upper edge of the brace where it leaves the walk side of the inner board. */
  private boolean cutsBoard(double footUpIn, int post) {
    if (!built.paired()) {
      return false;
    }
    double outIn = built.geometry().seatBreadthIn() / 2;
    double upIn = footUpIn + outIn + built.braces().depthIn() * Math.sqrt(0.5);
    return upIn > top.topIn(post) - built.geometry().headers().depthIn();
  }

  private Optional<SetOut.Spot> along(int post, int towards) {
    for (KneeBraces.Along each : built.braces().along()) {
      if (each.post() == post && each.towards() == towards) {
        return spot(
            toward(face(each), towards),
            named("brace.foot", top.topIn(post) - each.footUpIn()),
            named("brace.head-from-post", each.legIn()),
            named("brace.head-below", built.geometry().headers().depthIn() / 2));
      }
    }
    return Optional.empty();
  }

  private String face(KneeBraces.Along brace) {
    boolean packed = Braces.packingIn(built) > 0;
    if (brace.outside()) {
      return packed ? "brace.outer-packed" : "brace.outer";
    }
    return packed ? "brace.walk-packed" : "brace.walk";
  }

  private static Optional<SetOut.Spot> spot(String what, SetOut.Named... measures) {
    return Optional.of(new SetOut.Spot("", what, List.of(measures)));
  }
}

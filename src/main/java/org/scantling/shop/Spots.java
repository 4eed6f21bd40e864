package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.scantling.design.KneeBraces;
import org.scantling.design.TopLine;

/** What lies at a post elsewhere than one would look for it, and just where. */
final class Spots {
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
    together(spots, this::step);
    together(spots, this::shifted);
    if (built.railsFromLine() && !built.railsLevel()) {
      housings(spots);
    }
    if (built.has("brace")) {
      together(spots, this::across);
      for (int towards = 1; towards >= -1; towards -= 2) {
        int way = towards;
        together(spots, post -> along(post, way));
      }
    }
    return spots;
  }

  /** What is told of several posts alike is told once. */
  private void together(List<SetOut.Spot> spots, IntFunction<Optional<SetOut.Spot>> at) {
    Map<List<Object>, List<String>> posts = new LinkedHashMap<>();
    for (int post = 0; post < top.posts(); post++) {
      String names = Stakes.name(0, post) + ", " + Stakes.name(1, post);
      at.apply(post)
          .ifPresent(
              spot ->
                  posts
                      .computeIfAbsent(
                          List.of(spot.what(), spot.measures()), key -> new ArrayList<>())
                      .add(names));
    }
    posts.forEach(
        (key, names) -> {
          @SuppressWarnings("unchecked")
          List<SetOut.Named> measures = (List<SetOut.Named>) key.get(1);
          spots.add(new SetOut.Spot(String.join(", ", names), (String) key.get(0), measures));
        });
  }

  private SetOut.Named named(String name, double inches) {
    return new SetOut.Named(name, tape.nearest(inches));
  }

  private Optional<SetOut.Spot> step(int post) {
    if (!top.stepsAt(post)) {
      return Optional.empty();
    }
    return built.paired()
        ? spot(
            "boards meet at the middle of the post, the lower ones below",
            named("their top edges below the top of the post", top.stepIn()))
        : spot(
            "the lower header hangs on the side toward the last post",
            named(
                "seat of its hanger below the top of the post",
                top.stepIn() + built.geometry().headers().notchIn()));
  }

  private Optional<SetOut.Spot> shifted(int post) {
    double shiftIn = new Crossbeams(built).shiftIn(post);
    boolean stands = built.geometry().crossbeams().perBay() > 0;
    if (shiftIn == 0 || !stands) {
      return Optional.empty();
    }
    return spot(
        (built.geometry().crossbeams().doubled()
                ? "the two crossbeams side by side do not stand over the middle of the post but"
                    + " flush with its side toward the "
                : "the crossbeam does not stand over the middle of the post but flush with its side"
                    + " toward the ")
            + (shiftIn > 0 ? "last" : "first")
            + " post, so that "
            + (built.has("brace")
                ? "the brace across the walk lies flat on "
                    + (built.geometry().crossbeams().doubled() ? "them and on the post" : "both")
                : "it lies on the upper boards alone"),
        named(
            built.geometry().crossbeams().doubled()
                ? "their center from the center of the post"
                : "its center from the center of the post",
            Math.abs(shiftIn)));
  }

  /** Where rails fall or step, the housings of every post are marked from the level line. */
  private void housings(List<SetOut.Spot> spots) {
    Posts posts = new Posts(built);
    for (int towards = 1; towards >= -1; towards -= 2) {
      int way = towards;
      together(spots, post -> posts.housing(post, way).flatMap(each -> housing(post, way, each)));
    }
  }

  private Optional<SetOut.Spot> housing(int post, int towards, Recess housing) {
    double footIn = top.footIn(post) - built.shop("setout.level-line");
    return spot(
        "rail housing on the side toward the " + (towards > 0 ? "last" : "first") + " post",
        overLine("lower edge", footIn + housing.fromIn()),
        overLine("upper edge", footIn + housing.toIn()));
  }

  private SetOut.Named overLine(String what, double overIn) {
    return named(what + (overIn < 0 ? " below" : " above") + " the level line", Math.abs(overIn));
  }

  private Optional<SetOut.Spot> across(int post) {
    KneeBraces braces = built.braces();
    double footUpIn = new Braces(built).headAcrossUpIn(post) - braces.legIn();
    return spot(
        "brace across the walk, on the side toward the "
            + (KneeBraces.side(top) > 0 ? "last" : "first")
            + " post"
            + (cutsBoard(footUpIn, post) ? ", let in where it passes the inner board" : ""),
        named("foot below the top of the post", top.topIn(post) - footUpIn),
        named("head from the middle of the row", braces.legIn()));
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
            "brace along the walk, rising toward the "
                + (towards > 0 ? "last" : "first")
                + " post, on the "
                + (each.outside() ? "outer" : "walk")
                + " face"
                + packed(),
            named("foot below the top of the post", top.topIn(post) - each.footUpIn()),
            named("head from the middle of the post", each.legIn()),
            named(
                "head below the top edge of the header", built.geometry().headers().depthIn() / 2));
      }
    }
    return Optional.empty();
  }

  private String packed() {
    return Braces.packingIn(built) > 0 ? ", packed out from the post" : "";
  }

  private static Optional<SetOut.Spot> spot(String what, SetOut.Named... measures) {
    return Optional.of(new SetOut.Spot("", what, List.of(measures)));
  }
}

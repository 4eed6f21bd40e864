package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.design.Geometry;
import org.scantling.design.TopLine;
import org.scantling.sayings.Sayings;
import org.scantling.tables.NumberRow;

/** Works out the set-out. */
final class SettingOut {
  private static final Sayings SAYINGS = Sayings.of("set-out");

  private final Built built;
  private final Geometry geometry;
  private final TopLine top;
  private final Holes holes;
  private final Tape tape;
  private final Pieces pieces;

  SettingOut(Built built, Pieces pieces) {
    this.built = built;
    this.geometry = built.geometry();
    this.top = built.top();
    this.holes = new Holes(built);
    this.tape = built.tape();
    this.pieces = pieces;
  }

  SetOut setOut() {
    return new SetOut(
        posts(),
        diagonals(),
        running(),
        spacers(),
        new HeaderLines(built, pieces).lines(),
        new Spots(built).all(),
        built.free(),
        ground(),
        tolerances());
  }

  private double lineIn() {
    return built.shop("setout.level-line");
  }

  private List<SetOut.PostMark> posts() {
    List<SetOut.PostMark> posts = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post < top.posts(); post++) {
        posts.add(post(row, post));
      }
    }
    return posts;
  }

  private SetOut.PostMark post(int row, int post) {
    double digIn = holes.digIn(row, post);
    // Foot and hole bottom follow from top, post and bed as printed: each rounded by itself could
    // miss them by a sixteenth, and a level top must read alike at every post.
    double topIn = tape.nearest(top.topIn(post) - lineIn());
    double lengthIn = tape.nearest(top.topIn(post) - top.footIn(row, post));
    double footIn = lengthIn - topIn;
    return new SetOut.PostMark(
        Stakes.name(row, post),
        mark(row, post),
        tape.nearest(top.alongIn(post)),
        tape.nearest(top.alongIn(post) * Math.hypot(1, top.slopeRatio())),
        tape.nearest(row * geometry.plan().rowSpacingIn()),
        tape.nearest(digIn),
        built.inTheGround()
            ? footIn + tape.nearest(holes.bedIn())
            : tape.nearest(lineIn() - top.groundIn(row, post) + digIn),
        footIn,
        topIn,
        lengthIn);
  }

  /** The piece that stands there. */
  private String mark(int row, int post) {
    double alongIn = top.alongIn(post);
    double acrossIn = row * geometry.plan().rowSpacingIn();
    return pieces.of("post").stream()
        .filter(piece -> piece.places().stream().anyMatch(p -> stands(p, alongIn, acrossIn)))
        .findFirst()
        .orElseThrow()
        .mark();
  }

  private static boolean stands(Place post, double alongIn, double acrossIn) {
    return post.first().alongIn() == alongIn && post.first().acrossIn() == acrossIn;
  }

  private List<SetOut.Diagonal> diagonals() {
    List<SetOut.Diagonal> diagonals = new ArrayList<>();
    int bays = geometry.plan().bays();
    for (int bay = 0; bay < bays; bay++) {
      diagonals.add(diagonal(0, bay, 1, bay + 1));
      diagonals.add(diagonal(1, bay, 0, bay + 1));
    }
    if (bays > 1) {
      diagonals.add(diagonal(0, 0, 1, bays));
      diagonals.add(diagonal(1, 0, 0, bays));
    }
    return diagonals;
  }

  private SetOut.Diagonal diagonal(int fromRow, int from, int toRow, int to) {
    double alongIn = top.alongIn(to) - top.alongIn(from);
    return new SetOut.Diagonal(
        Stakes.name(fromRow, from),
        Stakes.name(toRow, to),
        tape.nearest(Math.hypot(alongIn, geometry.plan().rowSpacingIn())));
  }

  private List<SetOut.Running> running() {
    List<SetOut.Running> running = new ArrayList<>();
    double halfIn = geometry.posts().breadthIn() / 2;
    List<Double> middles = new ArrayList<>();
    List<Double> faces = new ArrayList<>();
    for (int post = 0; post < top.posts(); post++) {
      middles.add(tape.nearest(top.alongIn(post)));
      faces.add(tape.nearest(top.alongIn(post) - halfIn));
    }
    String onGround = SAYINGS.say("line.ground");
    running.add(new SetOut.Running(onGround, SAYINGS.say("mark.post-middle"), 0, middles));
    running.add(new SetOut.Running(onGround, SAYINGS.say("mark.post-face"), 0, faces));
    if (top.stepped()) {
      running.add(crossbeamsInPlan());
    } else {
      Crossbeams crossbeams = new Crossbeams(built);
      running.add(onHeader(pairs() ? "mark.pair-face" : "mark.crossbeam-face", crossbeams.lying()));
      List<Crossbeams.Lying> overPosts = crossbeams.overPosts();
      if (!overPosts.isEmpty()) {
        running.add(onHeader("mark.over-post-face", overPosts));
      }
    }
    return running;
  }

  private boolean pairs() {
    return geometry.crossbeams().doubled();
  }

  /**
   * Near faces of crossbeams, from the first end of the header.
   *
   * @param mark the saying of what is marked
   */
  private SetOut.Running onHeader(String mark, List<Crossbeams.Lying> crossbeams) {
    double stretch = top.stretchRatio();
    List<Double> marks = new ArrayList<>();
    for (Crossbeams.Lying each : crossbeams) {
      double middleIn = geometry.headerTailIn() + each.alongIn() * stretch;
      marks.add(tape.nearest(middleIn - each.breadthIn() / 2));
    }
    return new SetOut.Running(
        SAYINGS.say("line.header"), SAYINGS.say(mark), -geometry.headerTailIn(), marks);
  }

  /** On steps no one timber runs through, so the marks are plumbed up from the ground. */
  private SetOut.Running crossbeamsInPlan() {
    List<Double> marks = new ArrayList<>();
    for (double atIn : new Crossbeams(built).alongIn()) {
      marks.add(tape.nearest(atIn));
    }
    String middles = SAYINGS.say(pairs() ? "mark.pair-middle" : "mark.crossbeam-middle");
    return new SetOut.Running(SAYINGS.say("line.plumbed"), middles, 0, marks);
  }

  private List<SetOut.Spacer> spacers() {
    double postIn = geometry.posts().breadthIn();
    Map<Double, Integer> inRows = new LinkedHashMap<>();
    for (double bayIn : geometry.plan().along().lengthsIn()) {
      inRows.merge(tape.nearest(bayIn - postIn), 2, Integer::sum);
    }
    List<SetOut.Spacer> spacers = new ArrayList<>();
    inRows.forEach(
        (lengthIn, count) ->
            spacers.add(new SetOut.Spacer(SAYINGS.say("spacer.along"), lengthIn, count)));
    spacers.add(
        new SetOut.Spacer(
            SAYINGS.say("spacer.across"),
            tape.nearest(geometry.plan().rowSpacingIn() - postIn),
            top.posts()));
    return spacers;
  }

  private SetOut.Ground ground() {
    return new SetOut.Ground(
        lineIn(),
        tape.nearest(top.groundIn(0, 0) - top.groundIn(0, top.posts() - 1)),
        tape.nearest(top.acrossIn()),
        tape.nearest(built.footings().diameterIn()),
        tape.nearest(holes.bedIn()),
        holes.padded() ? built.shop("footing.pad-thickness") : 0,
        built.shop("setout.batter-boards"),
        top.headerFallRatio() != 0);
  }

  private List<SetOut.Tolerance> tolerances() {
    return List.of(
        tolerance("tolerance.diagonals", "setout.diagonal-within", 0),
        tolerance("tolerance.post", "setout.post-within", 0),
        tolerance("tolerance.lean", "setout.plumb-within", built.shop("setout.plumb-over")),
        tolerance("tolerance.depth", "setout.depth-within", 0),
        tolerance("tolerance.tops", "setout.level-within", 0));
  }

  private SetOut.Tolerance tolerance(String what, String row, double overIn) {
    NumberRow number = built.tables().shop(row);
    return new SetOut.Tolerance(SAYINGS.say(what), number.amount(), overIn, number.source());
  }
}

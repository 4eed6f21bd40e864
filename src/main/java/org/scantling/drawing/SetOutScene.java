package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.FreeStretch;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** Where everything goes on the ground, from above: row A at the bottom, A1 on the left. */
final class SetOutScene {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double BOARD_RATIO = 0.55;
  private static final List<Double> IN_A_BAY =
      List.of(0.5, 0.42, 0.58, 0.36, 0.64, 0.3, 0.7, 0.26, 0.74);
  private static final int MOST_ALIKE = 4;
  private static final int HUNDREDTHS = 40;

  private final Subject subject;
  private final DrawnLengths lengths;
  private final SetOut setOut;
  private final Windows windows;
  private final Scene scene = new Scene();

  private SetOutScene(Subject subject, Windows windows) {
    this.subject = subject;
    this.lengths = subject.lengths();
    this.setOut = subject.setOut();
    this.windows = windows;
  }

  static Scene of(Subject subject, Windows windows, Room room) {
    SetOutScene plan = new SetOutScene(subject, windows);
    plan.boards();
    plan.holes();
    plan.posts();
    plan.rows();
    plan.free();
    plan.diagonals();
    plan.dimensions(room);
    plan.setOut.posts().forEach(plan::name);
    return plan.scene;
  }

  private static ScenePoint at(SetOut.PostMark post) {
    return new ScenePoint(post.alongIn(), post.acrossIn());
  }

  private double lengthIn() {
    List<SetOut.PostMark> row = subject.row(0);
    return row.get(row.size() - 1).alongIn();
  }

  /** At each corner two boards, on which the strings are hung. */
  private void boards() {
    double outIn = setOut.ground().batterIn();
    double boardIn = BOARD_RATIO * outIn;
    for (int toEnd = -1; toEnd <= 1; toEnd += 2) {
      for (int toSide = -1; toSide <= 1; toSide += 2) {
        double alongIn = toEnd < 0 ? -outIn : lengthIn() + outIn;
        double acrossIn = toSide < 0 ? -outIn : subject.rowSpacingIn() + outIn;
        ScenePoint corner = new ScenePoint(alongIn, acrossIn);
        double backIn = outIn / 2;
        scene.line(
            corner.plus(0, -toSide * backIn),
            corner.plus(0, -toSide * (backIn + boardIn)),
            LineClass.CUT);
        scene.line(
            corner.plus(-toEnd * backIn, 0),
            corner.plus(-toEnd * (backIn + boardIn), 0),
            LineClass.CUT);
      }
    }
    scene.add(
        new Drawn.Note(
            SAYINGS.say("set-out.boards", "out", lengths.said(outIn)),
            Lettering.NOTE,
            List.of(
                new Drawn.Spot(
                    new ScenePoint(lengthIn() + outIn, subject.rowSpacingIn() + outIn),
                    0,
                    -10,
                    Anchor.END))));
  }

  private void holes() {
    for (SetOut.PostMark post : setOut.posts()) {
      scene.add(
          new Drawn.Round(at(post), setOut.ground().holeIn() / 2, Tone.SOIL, LineClass.VISIBLE));
    }
  }

  private void posts() {
    double halfIn = subject.geometry().posts().breadthIn() / 2;
    for (SetOut.PostMark post : setOut.posts()) {
      ScenePoint middle = at(post);
      scene.add(
          new Drawn.EndGrain(
              Scene.corners(middle.plus(-halfIn, -halfIn), middle.plus(halfIn, halfIn)),
              Tone.TIMBER,
              LineClass.CUT,
              post.mark()));
    }
  }

  /** The strings: along both rows and across both ends. */
  private void rows() {
    double outIn = setOut.ground().batterIn();
    for (double acrossIn : List.of(0.0, subject.rowSpacingIn())) {
      scene.line(
          new ScenePoint(-outIn, acrossIn),
          new ScenePoint(lengthIn() + outIn, acrossIn),
          LineClass.CENTRE);
    }
    for (double alongIn : List.of(0.0, lengthIn())) {
      scene.line(
          new ScenePoint(alongIn, -outIn),
          new ScenePoint(alongIn, subject.rowSpacingIn() + outIn),
          LineClass.CENTRE);
    }
  }

  /** Stretches in which no post may stand, between two lines across both rows. */
  private void free() {
    double pastIn = setOut.ground().holeIn();
    for (FreeStretch each : setOut.free()) {
      if (windows.together(each.fromIn(), each.toIn())) {
        for (double alongIn : List.of(each.fromIn(), each.toIn())) {
          scene.line(
              new ScenePoint(alongIn, -pastIn),
              new ScenePoint(alongIn, subject.rowSpacingIn() + pastIn),
              LineClass.HIDDEN);
        }
        scene.add(noPost((each.fromIn() + each.toIn()) / 2));
      }
    }
  }

  /** The word for it, where it is nearest to the middle of the way and to nothing else. */
  private Drawn noPost(double alongIn) {
    List<Drawn.Spot> spots =
        besideMiddle().stream()
            .map(share -> new ScenePoint(alongIn, share * subject.rowSpacingIn()))
            .map(at -> new Drawn.Spot(at, 0, 4, Anchor.MIDDLE))
            .toList();
    return new Drawn.Note(SAYINGS.say("set-out.no-post"), Lettering.NOTE, spots);
  }

  /** One way in each bay that is drawn, and one way over all. */
  private void diagonals() {
    setOut.overallDiagonal().ifPresent(each -> diagonal(each, besideMiddle()));
    for (SetOut.Diagonal each : inBays()) {
      if (windows.together(post(each.from()).alongIn(), post(each.to()).alongIn())) {
        diagonal(each, IN_A_BAY);
      }
    }
  }

  /** Of many that are alike the first and the last, so that the one over all can be read. */
  private List<SetOut.Diagonal> inBays() {
    List<SetOut.Diagonal> bays = setOut.bayDiagonals();
    boolean alike = bays.stream().map(SetOut.Diagonal::lengthIn).distinct().count() == 1;
    return alike && bays.size() > MOST_ALIKE
        ? List.of(bays.get(0), bays.get(bays.size() - 1))
        : bays;
  }

  /** Shares of a line, the middle first, then to both sides of it. */
  private static List<Double> besideMiddle() {
    List<Double> shares = new ArrayList<>();
    for (int off = 0; off <= HUNDREDTHS; off++) {
      shares.add(0.5 + off / 100.0);
      shares.add(0.5 - off / 100.0);
    }
    return shares;
  }

  private void diagonal(SetOut.Diagonal each, List<Double> along) {
    scene.add(
        new Drawn.Measured(
            at(post(each.from())),
            at(post(each.to())),
            LineClass.HIDDEN,
            lengths.of(each.from() + " " + each.to() + " diagonal", each.lengthIn()),
            along));
  }

  private SetOut.PostMark post(String name) {
    return setOut.posts().stream()
        .filter(post -> post.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** On a narrow screen the running figures say the same as those of the bays. */
  private void dimensions(Room room) {
    List<SetOut.PostMark> row = subject.row(0);
    List<ScenePoint> stops = row.stream().map(this::underHole).toList();
    if (room != Room.PHONE) {
      scene.add(SideDimensions.bays(subject, stops));
    }
    List<Drawn.Figure> running = new ArrayList<>();
    row.forEach(post -> running.add(lengths.of("A1 " + post.name() + " running", post.alongIn())));
    scene.add(new Drawn.Running(Side.BELOW, 1, stops, running));
    double holeIn = setOut.ground().holeIn() / 2;
    SetOut.PostMark acrossFirst = subject.row(1).get(0);
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(new ScenePoint(-holeIn, 0), new ScenePoint(-holeIn, acrossFirst.acrossIn())),
            List.of(lengths.of("A1 " + acrossFirst.name(), acrossFirst.acrossIn()))));
  }

  private ScenePoint underHole(SetOut.PostMark post) {
    return at(post).plus(0, -setOut.ground().holeIn() / 2);
  }

  /** Outside its row, with the depth of its hole where not all are alike. */
  private void name(SetOut.PostMark post) {
    boolean rowA = post.acrossIn() == 0;
    double holeIn = setOut.ground().holeIn() / 2;
    ScenePoint at = at(post).plus(0, rowA ? -holeIn : holeIn);
    double downPx = rowA ? 16 : -8;
    scene.add(
        new Drawn.Note(
            post.name(),
            Lettering.MARK,
            List.of(
                new Drawn.Spot(at, -6, downPx, Anchor.END),
                new Drawn.Spot(at, 6, downPx, Anchor.START))));
    scene.add(
        new Drawn.Note(
            post.mark(), Lettering.NOTE, List.of(new Drawn.Spot(at, 6, downPx, Anchor.START))));
    if (!sameDig(setOut)) {
      scene.add(
          new Drawn.Note(
              SAYINGS.say("set-out.dig-each", "dig", lengths.figure(post.digIn())),
              Lettering.FIGURE,
              List.of(new Drawn.Spot(at, 6, downPx + (rowA ? 16 : -16), Anchor.START))));
    }
  }

  static boolean sameDig(SetOut setOut) {
    return setOut.posts().stream().map(SetOut.PostMark::digIn).distinct().count() == 1;
  }
}

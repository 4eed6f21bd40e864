package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.scantling.shop.EndCut;
import org.scantling.shop.SetOut;

/** What is measured on the side of the walk, and the names of the posts. */
final class SideDimensions {
  private final Subject subject;
  private final DrawnLengths lengths;
  private final Scene scene;
  private final List<SetOut.PostMark> row;

  SideDimensions(Subject subject, Scene scene) {
    this.subject = subject;
    this.lengths = subject.lengths();
    this.scene = scene;
    this.row = subject.row(0);
  }

  void add() {
    scene.add(bays(subject, row.stream().map(this::bottom).toList()));
    if (row.size() > 2) {
      scene.add(overall());
    }
    left();
    right();
    headers();
    row.forEach(post -> PostName.add(scene, post, bottom(post)));
  }

  /** From post to post, as the stakes stand, so that the bays add up to the whole. */
  static Drawn.Dimension bays(Subject subject, List<ScenePoint> stops) {
    List<SetOut.PostMark> row = subject.row(0);
    List<Drawn.Figure> figures = new ArrayList<>();
    for (int i = 0; i + 1 < row.size(); i++) {
      SetOut.PostMark from = row.get(i);
      SetOut.PostMark to = row.get(i + 1);
      figures.add(
          subject.lengths().of(from.name() + " " + to.name(), to.alongIn() - from.alongIn()));
    }
    return new Drawn.Dimension(Side.BELOW, 0, stops, figures);
  }

  private Drawn.Dimension overall() {
    SetOut.PostMark first = row.get(0);
    SetOut.PostMark last = row.get(row.size() - 1);
    return new Drawn.Dimension(
        Side.BELOW,
        1,
        List.of(bottom(first), bottom(last)),
        List.of(lengths.of(first.name() + " " + last.name(), last.alongIn() - first.alongIn())));
  }

  private ScenePoint bottom(SetOut.PostMark post) {
    return new ScenePoint(post.alongIn(), subject.bottomIn(post));
  }

  private double groundIn(SetOut.PostMark post) {
    return subject.groundIn(post);
  }

  /** At the first post: the hole, and the post over the ground. */
  private void left() {
    SetOut.PostMark first = row.get(0);
    double halfHoleIn = subject.setOut().ground().holeIn() / 2;
    double topIn = subject.lineIn() + first.topOverLineIn();
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(
                new ScenePoint(-halfHoleIn, subject.bottomIn(first)),
                new ScenePoint(-halfHoleIn, groundIn(first)),
                new ScenePoint(-subject.geometry().headerTailIn(), topIn)),
            List.of(
                lengths.of(first.name() + " dig", first.digIn()),
                lengths.of(first.name() + " top", topIn - groundIn(first)))));
  }

  /** At the last post: the hole, and all that stands over the ground there. */
  private void right() {
    SetOut.PostMark last = row.get(row.size() - 1);
    double rightIn = last.alongIn() + subject.setOut().ground().holeIn() / 2;
    scene.add(
        new Drawn.Dimension(
            Side.RIGHT,
            0,
            List.of(
                new ScenePoint(rightIn, subject.bottomIn(last)),
                new ScenePoint(rightIn, groundIn(last))),
            List.of(lengths.of(last.name() + " dig", last.digIn()))));
    scene.add(overAll(subject));
  }

  /** From the ground at the last post to the top of all that stands there. */
  static Drawn.Dimension overAll(Subject subject) {
    List<SetOut.PostMark> row = subject.row(0);
    SetOut.PostMark last = row.get(row.size() - 1);
    double groundIn = subject.groundIn(last);
    ScenePoint highest = highest(subject);
    return new Drawn.Dimension(
        Side.RIGHT,
        0,
        List.of(
            new ScenePoint(last.alongIn() + subject.setOut().ground().holeIn() / 2, groundIn),
            highest),
        List.of(subject.lengths().of(last.name() + " over-all", highest.upIn() - groundIn)));
  }

  /** The upper edge of the last crossbeam. */
  private static ScenePoint highest(Subject subject) {
    Subject.Lying last =
        subject
            .lying("crossbeam")
            .max(Comparator.comparingDouble(Subject.Lying::alongIn))
            .orElseThrow();
    double lean = Math.hypot(1, subject.fallRatio());
    return new ScenePoint(
        last.alongIn() + last.shape().breadthIn() / 2,
        last.place().first().upIn() + last.shape().depthIn() / 2 / lean);
  }

  /** Each piece of the outer line by its mark, where it is level and so seen at its length. */
  private void headers() {
    List<Subject.Lying> line =
        subject
            .lying("header")
            .filter(each -> each.middleAcrossIn() <= outermostIn())
            .sorted(Comparator.comparingDouble(SideDimensions::leftIn))
            .toList();
    boolean level = line.stream().allMatch(SideDimensions::level) && !subject.top().stepped();
    if (level) {
      List<ScenePoint> stops = new ArrayList<>();
      List<Drawn.Figure> figures = new ArrayList<>();
      double topIn = highest(subject).upIn();
      stops.add(new ScenePoint(leftIn(line.get(0)), topIn));
      for (Subject.Lying each : line) {
        double lengthIn = each.shape().lengthIn();
        stops.add(new ScenePoint(rightIn(each), topIn));
        figures.add(
            new Drawn.Figure(
                each.mark() + "  " + lengths.figure(lengthIn), each.mark() + " length", lengthIn));
      }
      scene.add(new Drawn.Dimension(Side.ABOVE, 0, stops, figures));
    }
  }

  private double outermostIn() {
    return subject.lying("header").mapToDouble(Subject.Lying::middleAcrossIn).min().orElseThrow()
        + 1e-6;
  }

  private static double leftIn(Subject.Lying header) {
    return Math.min(header.place().first().alongIn(), header.place().last().alongIn());
  }

  private static double rightIn(Subject.Lying header) {
    return Math.max(header.place().first().alongIn(), header.place().last().alongIn());
  }

  private static boolean level(Subject.Lying header) {
    return header.place().first().upIn() == header.place().last().upIn()
        && header.shape().first() instanceof EndCut.Square
        && header.shape().last() instanceof EndCut.Square;
  }
}

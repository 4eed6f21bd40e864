package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.scantling.sayings.Sayings;
import org.scantling.shop.Bore;
import org.scantling.shop.Recess;

/**
 * The headers of row A at a post, from outside, laid level: with what holds them and how far that
 * is from edges and ends. Beside it the same sawn across.
 */
final class HeaderView implements DetailView {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double PAST_POST_IN = 8;
  private static final double UNDER_IN = 7;
  private static final double APART_PX = 62;
  private static final double SHANK_IN = 4;
  private static final double NEAR_IN = 1;
  private static final double BORE_PX = 1.6;

  private final Subject subject;
  private final Subject.Lying post;
  private final List<HeaderEnd> ends;
  private final UnaryOperator<ScenePoint> lay;

  private HeaderView(Subject subject, Subject.Lying post, List<HeaderEnd> ends) {
    this.subject = subject;
    this.post = post;
    this.ends = List.copyOf(ends);
    Subject.Lying frame = ends.get(0).lying();
    this.lay = PieceOutline.laying(Projection.SIDE, frame.shape(), frame.place());
  }

  /** At the first post of all. */
  static HeaderView atEndPost(Subject subject) {
    Subject.Lying header =
        outer(subject).stream()
            .min(Comparator.comparingDouble(Subject.Lying::fromAlongIn))
            .orElseThrow();
    return new HeaderView(subject, post(subject, 0), List.of(HeaderEnd.of(header, 0)));
  }

  /** Where two pieces of one line meet over a post; not where the top steps down. */
  static Optional<HeaderView> splice(Subject subject) {
    List<Subject.Lying> line =
        outer(subject).stream()
            .sorted(Comparator.comparingDouble(Subject.Lying::fromAlongIn))
            .toList();
    if (line.size() < 2 || subject.top().stepped()) {
      return Optional.empty();
    }
    double meetIn = line.get(0).toAlongIn();
    Subject.Lying post = post(subject, meetIn);
    return Optional.of(
        new HeaderView(
            subject,
            post,
            List.of(
                HeaderEnd.of(line.get(0), post.alongIn()),
                HeaderEnd.of(line.get(1), post.alongIn()))));
  }

  private static List<Subject.Lying> outer(Subject subject) {
    double outermostIn =
        subject.lying("header").mapToDouble(Subject.Lying::middleAcrossIn).min().orElseThrow();
    return subject
        .lying("header")
        .filter(each -> each.middleAcrossIn() <= outermostIn + 1e-6)
        .toList();
  }

  /** The nearest one of row A. */
  private static Subject.Lying post(Subject subject, double alongIn) {
    return subject
        .lying("post")
        .filter(each -> each.middleAcrossIn() == 0)
        .min(Comparator.comparingDouble(each -> Math.abs(each.alongIn() - alongIn)))
        .orElseThrow();
  }

  private boolean splice() {
    return ends.size() > 1;
  }

  private HeaderEnd end() {
    return ends.get(0);
  }

  private double halfIn() {
    return end().lying().shape().depthIn() / 2;
  }

  private double halfPostIn() {
    return post.shape().breadthIn() / 2;
  }

  /** Where the middle of the post comes to lie along the first header. */
  private double postAtIn() {
    return lay.apply(
            new ScenePoint(
                post.alongIn(), Projection.SIDE.of(end().lying().place().first()).upIn()))
        .rightIn();
  }

  private double fromIn() {
    double beforeIn = postAtIn() - halfPostIn() - PAST_POST_IN;
    return splice() ? beforeIn : Math.min(end().endAtIn(), beforeIn);
  }

  private double toIn() {
    double pastIn = postAtIn() + halfPostIn() + PAST_POST_IN;
    return splice() ? pastIn : Math.max(end().endAtIn(), pastIn);
  }

  private double lowIn() {
    return -halfIn() - UNDER_IN;
  }

  @Override
  public double wideIn() {
    return toIn() - fromIn() + 2 * halfPostIn() + 2 * PAST_POST_IN;
  }

  @Override
  public void draw(Scene scene, double pxIn) {
    CutOut cut =
        new CutOut(
            scene,
            new ScenePoint(fromIn() - (splice() ? 0 : 1), lowIn()),
            new ScenePoint(toIn(), halfIn() + 2 * UNDER_IN),
            pxIn);
    if (subject.geometry().headers().paired()) {
      behind(cut);
      headers(cut);
    } else {
      headers(cut);
      behind(cut);
    }
    ends.forEach(each -> bores(scene, each, pxIn));
    new HeaderFigures(subject, scene, ends, this::along).add();
    name(scene);
    new HeaderSection(subject, scene, post, end())
        .draw(toIn() + APART_PX * pxIn + halfPostIn() + PAST_POST_IN, lowIn(), pxIn);
  }

  /** A distance from the first end of a piece as it comes to lie along the first of them. */
  private double along(HeaderEnd of, double atIn) {
    if (of == end()) {
      return atIn;
    }
    ScenePoint first = lay.apply(Projection.SIDE.of(of.lying().place().first()));
    ScenePoint last = lay.apply(Projection.SIDE.of(of.lying().place().last()));
    return first.rightIn() + Math.signum(last.rightIn() - first.rightIn()) * atIn;
  }

  private void behind(CutOut cut) {
    List<ScenePoint> seen =
        PieceOutline.inElevation(Projection.SIDE, post.shape(), post.place(), subject.fallRatio())
            .stream()
            .map(lay)
            .toList();
    cut.timber(seen, LineClass.VISIBLE, post.mark());
  }

  private void headers(CutOut cut) {
    for (HeaderEnd each : ends) {
      List<ScenePoint> seen =
          PieceOutline.inElevation(
                  Projection.SIDE, each.lying().shape(), each.lying().place(), subject.fallRatio())
              .stream()
              .map(lay)
              .toList();
      cut.timber(seen, LineClass.VISIBLE, each.lying().mark());
    }
  }

  private void bores(Scene scene, HeaderEnd end, double pxIn) {
    for (Bore bore : end.bores(halfPostIn() + NEAR_IN)) {
      double atIn = along(end, bore.atIn());
      if (bore.face().equals("side")) {
        scene.add(
            new Drawn.Round(
                new ScenePoint(atIn, bore.offIn()),
                Math.max(bore.diameterIn() / 2, BORE_PX * pxIn),
                Tone.PAPER,
                LineClass.VISIBLE));
      } else {
        scene.line(
            new ScenePoint(atIn, halfIn() + NEAR_IN),
            new ScenePoint(atIn, -halfIn() - SHANK_IN),
            LineClass.CENTRE);
      }
    }
  }

  private void name(Scene scene) {
    for (HeaderEnd each : ends) {
      double side = splice() && each != end() ? 1 : -1;
      double atIn =
          splice()
              ? postAtIn() + side * (halfPostIn() + PAST_POST_IN / 2)
              : postAtIn() + Math.signum(postAtIn() - end().endAtIn()) * (halfPostIn() + 4);
      PieceName.add(scene, each.lying(), new ScenePoint(atIn, 0));
    }
    PieceName.add(scene, post, new ScenePoint(postAtIn(), lowIn() + UNDER_IN / 3));
  }

  @Override
  public List<String> notes() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("header", end().lying().mark());
    blanks.put("size", end().lying().shape().size());
    blanks.put("post", post.mark());
    blanks.put("post-size", post.shape().size());
    TreeSet<String> through = new TreeSet<>();
    ends.forEach(
        each -> each.bores(halfPostIn() + NEAR_IN).forEach(bore -> through.add(bore.what())));
    if (!through.isEmpty()) {
      blanks.put("through", String.join(", ", through));
    }
    if (splice()) {
      blanks.put("other", ends.get(1).lying().mark());
    }
    List<String> notes = new ArrayList<>();
    notes.add(SAYINGS.say(splice() ? "detail-splice.notes" : "detail-header.notes", blanks));
    if (subject.fallRatio() != 0) {
      notes.add(SAYINGS.say("detail-header.level"));
    }
    if (end().lying().shape().recesses().stream().anyMatch(HeaderView::notch)) {
      notes.add(SAYINGS.say("detail-header.notch"));
    }
    return notes;
  }

  private static boolean notch(Recess recess) {
    return recess.seat().role().equals("post");
  }
}

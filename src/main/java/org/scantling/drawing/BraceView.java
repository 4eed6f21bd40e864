package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.KneeBraces;
import org.scantling.sayings.Sayings;
import org.scantling.shop.Bore;
import org.scantling.shop.EndCut;
import org.scantling.shop.Shape;

/** A knee brace between its post and the timber overhead, and under that the brace laid flat. */
final class BraceView implements DetailView {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double PAST_IN = 6;
  private static final double APART_PX = 44;
  private static final double BORE_PX = 1.6;
  private static final double MARK_PX = 15;
  private static final double ELBOW_PX = 14;

  private final Subject subject;
  private final Subject.Lying brace;
  private final Subject.Lying post;
  private final Subject.Lying beam;
  private final Projection from;
  private final double legIn;

  private BraceView(Subject subject, Subject.Lying brace, KneeBraces braces) {
    this.subject = subject;
    this.brace = brace;
    this.from = brace.across() ? Projection.END : Projection.SIDE;
    this.post =
        subject
            .lying("post")
            .filter(each -> each.middleAcrossIn() == 0)
            .min(Comparator.comparingDouble(each -> Math.abs(each.alongIn() - footAlongIn(brace))))
            .orElseThrow();
    this.beam = brace.across() ? EndScene.nearest(subject) : header();
    this.legIn = brace.across() ? braces.legIn() : alongLegIn(braces);
  }

  /** The first of row A that runs so; along the walk, one that lies outside before others. */
  static Optional<BraceView> of(Subject subject, boolean across) {
    return subject
        .structure()
        .braces()
        .flatMap(
            braces ->
                subject
                    .lying("brace")
                    .filter(each -> each.across() == across)
                    .filter(each -> each.place().first().acrossIn() < subject.rowSpacingIn() / 2)
                    .min(
                        Comparator.comparing(
                                (Subject.Lying each) ->
                                    !across && each.place().first().acrossIn() > 0)
                            .thenComparingDouble(each -> Math.abs(footAlongIn(each))))
                    .map(each -> new BraceView(subject, each, braces)));
  }

  private static double footAlongIn(Subject.Lying brace) {
    return brace.place().first().alongIn();
  }

  private Subject.Lying header() {
    double headIn = brace.place().last().alongIn();
    return subject
        .lying("header")
        .filter(each -> each.middleAcrossIn() < subject.rowSpacingIn() / 2)
        .filter(each -> each.fromAlongIn() <= headIn && each.toAlongIn() >= headIn)
        .min(Comparator.comparingDouble(Subject.Lying::middleAcrossIn))
        .orElseThrow();
  }

  private double alongLegIn(KneeBraces braces) {
    int towards = brace.place().last().alongIn() > brace.place().first().alongIn() ? 1 : -1;
    boolean outside = brace.place().first().acrossIn() < 0;
    int place = subject.top().nearestPost(post.alongIn());
    return braces.along().stream()
        .filter(
            each -> each.post() == place && each.towards() == towards && each.outside() == outside)
        .findFirst()
        .orElseThrow()
        .legIn();
  }

  /** Where the middle lines meet: of post and brace, or of beam and brace. */
  private ScenePoint node(boolean foot) {
    List<Bore> bores = brace.shape().bores();
    int half = bores.size() / 2;
    double atIn =
        (foot ? bores.subList(0, half) : bores.subList(half, bores.size()))
            .stream().mapToDouble(Bore::atIn).average().orElseThrow();
    return bored(atIn);
  }

  private ScenePoint bored(double atIn) {
    ScenePoint first = from.of(brace.place().first());
    ScenePoint last = from.of(brace.place().last());
    double longIn = brace.place().first().toIn(brace.place().last());
    return first.towards(last, atIn / longIn);
  }

  private double halfPostIn() {
    return post.shape().breadthIn() / 2;
  }

  private ScenePoint postAt() {
    return from.of(post.place().first());
  }

  private int towards() {
    return node(false).rightIn() > node(true).rightIn() ? 1 : -1;
  }

  private List<ScenePoint> seen(Subject.Lying lying) {
    return PieceOutline.inElevation(from, lying.shape(), lying.place(), subject.fallRatio());
  }

  private double lowIn() {
    return Subject.lowOf(seen(brace)) - PAST_IN;
  }

  @Override
  public double wideIn() {
    return Math.max(brace.shape().lengthIn(), legIn + halfPostIn() + 3 * PAST_IN);
  }

  @Override
  public void draw(Scene scene, double pxIn) {
    double nearIn = postAt().rightIn() - towards() * (halfPostIn() + PAST_IN);
    double farIn = node(false).rightIn() + towards() * 2 * PAST_IN;
    CutOut cut =
        new CutOut(
            scene,
            new ScenePoint(Math.min(nearIn, farIn), lowIn()),
            new ScenePoint(Math.max(nearIn, farIn), node(false).upIn() + beam.shape().depthIn()),
            pxIn);
    cut.timber(seen(post), LineClass.VISIBLE, post.mark());
    if (brace.across()) {
      headers(scene);
    }
    cut.timber(seen(beam), LineClass.VISIBLE, beam.mark());
    cut.timber(seen(brace), LineClass.VISIBLE, brace.mark());
    brace.shape().bores().forEach(bore -> hole(scene, bored(bore.atIn()), bore, pxIn));
    middleLines(scene);
    legs(scene);
    flat(scene, pxIn);
    PieceName.add(scene, post, new ScenePoint(postAt().rightIn(), lowIn() + PAST_IN / 2));
    PieceName.add(scene, beam, new ScenePoint(farIn - towards() * PAST_IN, node(false).upIn()));
    PieceName.add(scene, brace, node(true).towards(node(false), 0.5));
  }

  /** Sawn across over the post. */
  private void headers(Scene scene) {
    EndScene.headersAt(subject, post.alongIn())
        .filter(each -> each.middleAcrossIn() < subject.rowSpacingIn() / 2)
        .forEach(each -> EndScene.header(subject, scene, each, post.alongIn()));
  }

  private static void hole(Scene scene, ScenePoint at, Bore bore, double pxIn) {
    scene.add(
        new Drawn.Round(
            at, Math.max(bore.diameterIn() / 2, BORE_PX * pxIn), Tone.PAPER, LineClass.VISIBLE));
  }

  private void middleLines(Scene scene) {
    scene.line(
        node(true).plus(0, -PAST_IN / 2),
        new ScenePoint(node(true).rightIn(), node(false).upIn()),
        LineClass.CENTRE);
    scene.line(
        new ScenePoint(node(true).rightIn(), node(false).upIn()),
        node(false).plus(towards() * PAST_IN / 2, 0),
        LineClass.CENTRE);
  }

  /** Both are as long. */
  private void legs(Scene scene) {
    ScenePoint corner = new ScenePoint(node(true).rightIn(), node(false).upIn());
    List<ScenePoint> level =
        towards() > 0 ? List.of(corner, node(false)) : List.of(node(false), corner);
    scene.add(new Drawn.Dimension(Side.ABOVE, 0, level, List.of(leg("along"))));
    scene.add(
        new Drawn.Dimension(
            towards() > 0 ? Side.LEFT : Side.RIGHT,
            0,
            List.of(node(true), corner),
            List.of(leg("up"))));
  }

  private Drawn.Figure leg(String way) {
    return subject.lengths().of("detail " + brace.mark() + " leg " + way, legIn);
  }

  /** Its first end on the left, every mark from there. */
  private void flat(Scene scene, double pxIn) {
    Shape shape = brace.shape();
    double halfIn = shape.depthIn() / 2;
    double leftIn = Math.min(postAt().rightIn(), node(false).rightIn()) - halfPostIn();
    double middleIn = lowIn() - APART_PX * pxIn - halfIn;
    List<ScenePoint> outline =
        PieceOutline.laidFlat(from, shape, brace.place(), subject.fallRatio()).stream()
            .map(each -> each.plus(leftIn, middleIn))
            .toList();
    scene.add(new Drawn.Outline(outline, Tone.TIMBER, LineClass.VISIBLE, brace.mark()));
    List<Double> at = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < shape.bores().size(); i++) {
      Bore bore = shape.bores().get(i);
      hole(scene, new ScenePoint(leftIn + bore.atIn(), middleIn + bore.offIn()), bore, pxIn);
      at.add(bore.atIn());
      names.add("bore " + i + " running");
    }
    at.add(shape.lengthIn());
    names.add("length running");
    List<Double> stands = PieceSheet.spread(at, MARK_PX * pxIn);
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    for (int i = 0; i < at.size(); i++) {
      ScenePoint edge = new ScenePoint(leftIn + at.get(i), middleIn - halfIn - 3 * pxIn);
      ScenePoint stop = new ScenePoint(leftIn + stands.get(i), middleIn - halfIn - ELBOW_PX * pxIn);
      scene.line(edge, stop, LineClass.THIN);
      stops.add(stop);
      figures.add(subject.lengths().of("detail " + brace.mark() + " " + names.get(i), at.get(i)));
    }
    scene.add(new Drawn.Running(Side.BELOW, -1, stops, figures));
  }

  @Override
  public List<String> notes() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("brace", brace.mark());
    blanks.put("size", brace.shape().size());
    blanks.put("post", post.mark());
    blanks.put("beam", beam.mark());
    blanks.put("bolt", brace.shape().bores().get(0).what());
    blanks.put("end", brace.shape().ends().first());
    if (brace.shape().first() instanceof EndCut.Sloping cut) {
      blanks.put("degrees", Long.toString(Math.round(cut.offSquareDegrees())));
    }
    return List.of(SAYINGS.say("detail-brace.notes", blanks));
  }
}

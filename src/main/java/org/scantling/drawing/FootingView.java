package org.scantling.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** The hole of the first post cut through along the walk, with what stands and lies in it. */
final class FootingView implements DetailView {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double BESIDE_IN = 17;
  private static final double OVER_IN = 10;
  private static final double NAME_PX = 7;

  private final Subject subject;
  private final SetOut.PostMark mark;
  private final Subject.Lying post;
  private final double holeIn;

  FootingView(Subject subject) {
    this.subject = subject;
    this.mark = subject.row(0).get(0);
    this.post =
        subject
            .lying("post")
            .filter(each -> each.alongIn() == 0 && each.middleAcrossIn() == 0)
            .findFirst()
            .orElseThrow();
    this.holeIn = subject.setOut().ground().holeIn();
  }

  @Override
  public double wideIn() {
    return holeIn + 2 * BESIDE_IN;
  }

  private double reachIn() {
    return wideIn() / 2;
  }

  private double bottomIn() {
    return subject.bottomIn(mark);
  }

  private double groundIn() {
    return subject.groundIn(mark);
  }

  private double footIn() {
    return subject.lineIn() - mark.footBelowLineIn();
  }

  /** Top of the gravel under the pad, or under the post. */
  private double gravelIn() {
    SetOut.Ground ground = subject.setOut().ground();
    return bottomIn() + ground.bedIn() - ground.padIn();
  }

  @Override
  public void draw(Scene scene, double pxIn) {
    double slope = subject.top().slopeRatio();
    GroundScene ground = new GroundScene(subject, scene, List.of(0.0), pxIn);
    ground.line(-reachIn(), reachIn(), slope);
    ground.hole(mark, 0, slope);
    Hatch hatch = new Hatch(scene, pxIn);
    hatch.earth(-holeIn / 2, holeIn / 2, bottomIn(), groundIn());
    fill(hatch);
    subject
        .frostIn()
        .ifPresent(depthIn -> ground.under(-reachIn(), reachIn(), slope, depthIn, LineClass.FROST));
    double halfIn = post.shape().breadthIn() / 2;
    new CutOut(
            scene,
            new ScenePoint(-reachIn(), bottomIn()),
            new ScenePoint(reachIn(), Math.max(groundIn(), footIn()) + OVER_IN),
            pxIn)
        .timber(
            Scene.corners(
                new ScenePoint(-halfIn, footIn()),
                new ScenePoint(halfIn, footIn() + post.shape().lengthIn())),
            LineClass.VISIBLE,
            post.mark());
    dimensions(scene);
    names(scene);
  }

  /** What is round the post by the signs of drafting; what the post covers is left out. */
  private void fill(Hatch hatch) {
    double halfPostIn = post.shape().breadthIn() / 2;
    double fromIn = subject.onPiers() ? -halfPostIn : footIn();
    double keepIn = subject.onPiers() ? 0 : halfPostIn;
    Hatch.Band band =
        new Hatch.Band(-holeIn / 2, holeIn / 2, gravelIn(), groundIn(), keepIn, fromIn);
    if (subject.concrete()) {
      hatch.concrete(band);
    } else if (subject.inGravel()) {
      hatch.gravel(band);
    } else {
      hatch.tamped(band);
    }
    if (gravelIn() > bottomIn()) {
      hatch.gravel(new Hatch.Band(-holeIn / 2, holeIn / 2, bottomIn(), gravelIn(), 0, 0));
    }
  }

  private Drawn.Figure figure(String of, double lengthIn) {
    return subject.lengths().of("detail " + of, lengthIn);
  }

  private void dimensions(Scene scene) {
    double edgeIn = holeIn / 2;
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(new ScenePoint(-edgeIn, bottomIn()), new ScenePoint(-edgeIn, groundIn())),
            List.of(figure(mark.name() + " dig", mark.digIn()))));
    subject
        .frostIn()
        .ifPresent(
            depthIn ->
                scene.add(
                    new Drawn.Dimension(
                        Side.LEFT,
                        1,
                        List.of(
                            new ScenePoint(-edgeIn, groundIn() - depthIn),
                            new ScenePoint(-edgeIn, groundIn())),
                        List.of(figure("frost", depthIn)))));
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            0,
            List.of(new ScenePoint(-edgeIn, bottomIn()), new ScenePoint(edgeIn, bottomIn())),
            List.of(figure("hole width", holeIn))));
    double halfIn = post.shape().breadthIn() / 2;
    double topIn = Math.max(groundIn(), footIn()) + OVER_IN;
    scene.add(
        new Drawn.Dimension(
            Side.ABOVE,
            0,
            List.of(new ScenePoint(-halfIn, topIn), new ScenePoint(halfIn, topIn)),
            List.of(figure(post.mark() + " breadth", post.shape().breadthIn()))));
    layers(scene);
  }

  /** Gravel, pad, and what of the post is in the ground; or how high over it a foot stands. */
  private void layers(Scene scene) {
    SetOut.Ground ground = subject.setOut().ground();
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    double edgeIn = holeIn / 2;
    stops.add(new ScenePoint(edgeIn, bottomIn()));
    if (ground.bedIn() > ground.padIn()) {
      stops.add(new ScenePoint(edgeIn, gravelIn()));
      figures.add(figure("bed", ground.bedIn() - ground.padIn()));
    }
    double halfIn = post.shape().breadthIn() / 2;
    if (ground.padIn() > 0) {
      stops.add(new ScenePoint(halfIn, gravelIn() + ground.padIn()));
      figures.add(figure("pad", ground.padIn()));
    }
    if (subject.onPiers()) {
      stops.add(new ScenePoint(edgeIn, groundIn()));
      figures.add(figure(mark.name() + " pier", groundIn() - gravelIn()));
      stops.add(new ScenePoint(halfIn, footIn()));
      figures.add(figure(mark.name() + " foot over", footIn() - groundIn()));
    } else {
      stops.add(new ScenePoint(edgeIn, groundIn()));
      figures.add(figure(mark.name() + " foot", groundIn() - footIn()));
    }
    scene.add(new Drawn.Dimension(Side.RIGHT, 0, stops, figures));
  }

  private void names(Scene scene) {
    double topIn = Math.max(groundIn(), footIn()) + OVER_IN / 2;
    double halfIn = post.shape().breadthIn() / 2;
    scene.add(
        new Drawn.Note(
            post.mark() + "  " + post.shape().size(),
            Lettering.MARK,
            List.of(
                new Drawn.Spot(new ScenePoint(halfIn, topIn), NAME_PX, 0, Anchor.START),
                new Drawn.Spot(new ScenePoint(-halfIn, topIn), -NAME_PX, 0, Anchor.END))));
    subject
        .frostIn()
        .ifPresent(
            depthIn -> {
              double slope = subject.top().slopeRatio();
              ScenePoint right = new ScenePoint(reachIn(), -slope * reachIn() - depthIn);
              ScenePoint left = new ScenePoint(-reachIn(), slope * reachIn() - depthIn);
              double underIn = Math.min(bottomIn(), groundIn() - depthIn);
              ScenePoint under = new ScenePoint(reachIn(), underIn);
              scene.add(
                  DepthWord.frost(
                      subject,
                      depthIn,
                      List.of(
                          new Drawn.Spot(right, 4, -6, Anchor.END),
                          new Drawn.Spot(right, 4, 16, Anchor.END),
                          new Drawn.Spot(left, -4, -6, Anchor.START),
                          new Drawn.Spot(left, -4, 16, Anchor.START),
                          new Drawn.Spot(under, 4, 28, Anchor.START),
                          new Drawn.Spot(under, 60, 28, Anchor.START),
                          new Drawn.Spot(under, 60, 60, Anchor.START))));
            });
  }

  @Override
  public List<String> notes() {
    SetOut.Ground ground = subject.setOut().ground();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("post", mark.name());
    blanks.put("hole", subject.lengths().said(holeIn));
    blanks.put("dig", subject.lengths().said(mark.digIn()));
    String fill = subject.concrete() ? "concrete" : subject.inGravel() ? "gravel" : "soil";
    blanks.put("fill", SAYINGS.say("fill." + fill));
    List<String> notes = new ArrayList<>();
    notes.add(SAYINGS.say("detail-footing.notes", blanks));
    if (ground.padIn() > 0) {
      notes.add(SAYINGS.say("detail-footing.pad", "pad", subject.lengths().said(ground.padIn())));
    }
    if (subject.structure().footings().onRock()) {
      notes.add(SAYINGS.say("detail-footing.rock"));
    }
    if (subject.onPiers()) {
      notes.add(SAYINGS.say("detail-footing.bracket"));
    }
    return notes;
  }
}

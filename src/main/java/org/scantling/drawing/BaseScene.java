package org.scantling.drawing;

import java.util.List;
import java.util.stream.IntStream;
import org.scantling.design.BaseDesign;
import org.scantling.design.Geometry;

/** The base design from its side, on level ground, without what its file does not say. */
final class BaseScene {
  private final BaseFrame base;
  private final Geometry geometry;
  private final Scene scene = new Scene();
  private final double pxIn;

  private BaseScene(BaseFrame base, double pxIn) {
    this.base = base;
    this.geometry = base.geometry();
    this.pxIn = pxIn;
  }

  /**
   * @param beforePx ground before the first header
   * @param afterPx ground after the last
   */
  static Scene of(BaseFrame base, double pxIn, double beforePx, double afterPx) {
    BaseScene stands = new BaseScene(base, pxIn);
    stands.ground(beforePx, afterPx);
    stands.sides();
    stands.braces();
    stands.posts();
    stands.header();
    stands.crossbeams();
    return stands.scene;
  }

  private void ground(double beforePx, double afterPx) {
    double tailIn = geometry.headerTailIn();
    scene.line(
        new ScenePoint(-tailIn - beforePx * pxIn, 0),
        new ScenePoint(geometry.lengthIn() + tailIn + afterPx * pxIn, 0),
        LineClass.GROUND);
    base.holeIn()
        .ifPresent(
            holeIn ->
                posts(geometry)
                    .forEach(
                        alongIn ->
                            scene.box(
                                new ScenePoint(alongIn - holeIn / 2, -embeddedIn()),
                                new ScenePoint(alongIn + holeIn / 2, 0),
                                fill(),
                                LineClass.CUT)));
  }

  private Tone fill() {
    if (base.concrete()) {
      return Tone.CONCRETE;
    }
    return base.inGravel() ? Tone.GRAVEL : Tone.SOIL;
  }

  private double embeddedIn() {
    return base.design().posts().embedmentIn();
  }

  /** Middles of the posts of a row. */
  static List<Double> posts(Geometry geometry) {
    return IntStream.rangeClosed(0, geometry.plan().bays())
        .mapToObj(post -> geometry.plan().along().alongIn(post))
        .toList();
  }

  private void timber(ScenePoint low, ScenePoint high) {
    scene.box(low, high, Tone.TIMBER, LineClass.VISIBLE);
  }

  private void posts() {
    double halfIn = geometry.posts().breadthIn() / 2;
    for (double alongIn : posts(geometry)) {
      timber(
          new ScenePoint(alongIn - halfIn, -embeddedIn()),
          new ScenePoint(alongIn + halfIn, geometry.posts().heightIn()));
    }
  }

  private double headerLowIn() {
    return geometry.headerTopIn() - geometry.headers().depthIn();
  }

  private void header() {
    timber(
        new ScenePoint(-geometry.headerTailIn(), headerLowIn()),
        new ScenePoint(geometry.lengthIn() + geometry.headerTailIn(), geometry.headerTopIn()));
  }

  private void crossbeams() {
    double lowIn = geometry.crossbeamUndersideIn();
    double highIn = lowIn + geometry.crossbeams().depthIn();
    for (double alongIn : geometry.crossbeamsAtIn()) {
      boolean atPost = posts(geometry).stream().anyMatch(post -> Math.abs(post - alongIn) < 1e-6);
      double halfIn =
          (atPost ? geometry.crossbeams().breadthAtPostsIn() : geometry.crossbeams().breadthIn())
              / 2;
      timber(new ScenePoint(alongIn - halfIn, lowIn), new ScenePoint(alongIn + halfIn, highIn));
    }
  }

  private void sides() {
    base.design().sidePanels().ifPresent(this::panels);
  }

  private void panels(BaseDesign.SidePanels panels) {
    double halfRailIn = base.depthIn(panels.rail()) / 2;
    double halfPostIn = geometry.posts().breadthIn() / 2;
    double halfIn = base.picketIn() / 2;
    List<Double> posts = posts(geometry);
    for (int bay = 0; bay + 1 < posts.size(); bay++) {
      double fromIn = posts.get(bay);
      double bayIn = posts.get(bay + 1) - fromIn;
      timber(
          new ScenePoint(fromIn + halfPostIn, panels.railHeightIn() - halfRailIn),
          new ScenePoint(fromIn + bayIn - halfPostIn, panels.railHeightIn() + halfRailIn));
      int spaces = geometry.plan().along().spacesIn(bay, panels.pickets() + 1);
      for (int picket = 1; picket < spaces; picket++) {
        double alongIn = fromIn + bayIn * picket / spaces;
        timber(
            new ScenePoint(alongIn - halfIn, panels.railHeightIn() + halfRailIn),
            new ScenePoint(alongIn + halfIn, headerLowIn()));
      }
    }
  }

  private void braces() {
    base.design().braces().ifPresent(this::braces);
  }

  /** At 45 degrees in both corners of every bay, from middle line to middle line. */
  private void braces(BaseDesign.Braces braces) {
    double halfIn = base.depthIn(braces.size()) / 2 * Math.sqrt(0.5);
    double headIn = (headerLowIn() + geometry.headerTopIn()) / 2;
    List<Double> posts = posts(geometry);
    for (int post = 0; post < posts.size(); post++) {
      for (int towards = -1; towards <= 1; towards += 2) {
        if (post + towards >= 0 && post + towards < posts.size()) {
          ScenePoint foot = new ScenePoint(posts.get(post), headIn - braces.legIn());
          ScenePoint head = new ScenePoint(posts.get(post) + towards * braces.legIn(), headIn);
          scene.area(
              List.of(
                  foot.plus(-towards * halfIn, halfIn),
                  foot.plus(towards * halfIn, -halfIn),
                  head.plus(towards * halfIn, -halfIn),
                  head.plus(-towards * halfIn, halfIn)),
              Tone.TIMBER,
              LineClass.VISIBLE);
        }
      }
    }
  }
}

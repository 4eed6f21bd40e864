package org.scantling.drawing;

import java.util.List;
import org.scantling.shop.Bore;
import org.scantling.shop.Shape;

/** Headers at a post sawn across. */
final class HeaderSection {
  private static final double PAST_IN = 1;
  private static final double HAIR_IN = 1e-6;
  private static final double SHANK_IN = 4;

  private final Subject subject;
  private final Scene scene;
  private final Subject.Lying post;
  private final HeaderEnd end;
  private final Shape shape;

  HeaderSection(Subject subject, Scene scene, Subject.Lying post, HeaderEnd end) {
    this.subject = subject;
    this.scene = scene;
    this.post = post;
    this.end = end;
    this.shape = end.lying().shape();
  }

  /**
   * Draws it beside the header.
   *
   * @param middleIn of the post, as it lies in the drawing
   * @param lowIn where the post is broken off
   */
  void draw(double middleIn, double lowIn, double pxIn) {
    double halfPostIn = post.shape().breadthIn() / 2;
    double halfIn = shape.depthIn() / 2;
    boolean paired = subject.geometry().headers().paired();
    double notchIn =
        end.notch().isPresent() ? shape.recesses().get(end.notch().getAsInt()).depthIn() : 0;
    double topIn = paired ? halfIn : -halfIn + notchIn;
    new CutOut(
            scene,
            new ScenePoint(middleIn - 2 * halfPostIn, lowIn),
            new ScenePoint(middleIn + 2 * halfPostIn, halfIn + 1),
            pxIn)
        .timber(
            Scene.corners(
                new ScenePoint(middleIn - halfPostIn, lowIn - halfIn),
                new ScenePoint(middleIn + halfPostIn, topIn)),
            LineClass.VISIBLE,
            post.mark());
    if (paired) {
      double offIn = halfPostIn + shape.breadthIn() / 2;
      grain(middleIn - offIn, -halfIn);
      grain(middleIn + offIn, -halfIn);
      bolts(middleIn, halfPostIn + shape.breadthIn() + PAST_IN);
      chain(middleIn, halfPostIn, -halfIn);
    } else {
      grain(middleIn, topIn);
      lags(middleIn);
      over(middleIn, halfPostIn);
    }
  }

  /** What is left of it over the notch. */
  private void grain(double middleIn, double lowIn) {
    double broadIn = shape.breadthIn() / 2;
    scene.add(
        new Drawn.EndGrain(
            Scene.corners(
                new ScenePoint(middleIn - broadIn, lowIn),
                new ScenePoint(middleIn + broadIn, shape.depthIn() / 2)),
            Tone.TIMBER,
            LineClass.CUT,
            end.lying().mark()));
  }

  private List<Bore> bores() {
    return end.bores(post.shape().breadthIn() / 2 + PAST_IN);
  }

  private void bolts(double middleIn, double reachIn) {
    bores().stream()
        .filter(each -> each.face().equals("side"))
        .mapToDouble(Bore::offIn)
        .distinct()
        .forEach(
            offIn ->
                scene.line(
                    new ScenePoint(middleIn - reachIn, offIn),
                    new ScenePoint(middleIn + reachIn, offIn),
                    LineClass.CENTRE));
  }

  private void lags(double middleIn) {
    bores().stream()
        .filter(each -> each.face().equals("top"))
        .mapToDouble(Bore::offIn)
        .distinct()
        .forEach(
            offIn ->
                scene.line(
                    new ScenePoint(middleIn + offIn, shape.depthIn() / 2 + PAST_IN),
                    new ScenePoint(middleIn + offIn, -shape.depthIn() / 2 - SHANK_IN),
                    LineClass.CENTRE));
  }

  private Drawn.Figure board() {
    return subject.lengths().of("detail " + end.lying().mark() + " breadth", shape.breadthIn());
  }

  private Drawn.Figure postFigure() {
    return subject.lengths().of("detail " + post.mark() + " breadth", post.shape().breadthIn());
  }

  private void chain(double middleIn, double halfPostIn, double lowIn) {
    double outIn = halfPostIn + shape.breadthIn();
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            0,
            List.of(
                new ScenePoint(middleIn - outIn, lowIn),
                new ScenePoint(middleIn - halfPostIn, lowIn),
                new ScenePoint(middleIn + halfPostIn, lowIn),
                new ScenePoint(middleIn + outIn, lowIn)),
            List.of(board(), postFigure(), board())));
  }

  private void over(double middleIn, double halfPostIn) {
    double upIn = shape.depthIn() / 2;
    double halfIn = shape.breadthIn() / 2;
    scene.add(
        new Drawn.Dimension(
            Side.ABOVE,
            0,
            List.of(
                new ScenePoint(middleIn - halfIn, upIn), new ScenePoint(middleIn + halfIn, upIn)),
            List.of(board())));
    if (Math.abs(halfPostIn - halfIn) > HAIR_IN) {
      scene.add(
          new Drawn.Dimension(
              Side.BELOW,
              0,
              List.of(
                  new ScenePoint(middleIn - halfPostIn, -upIn),
                  new ScenePoint(middleIn + halfPostIn, -upIn)),
              List.of(postFigure())));
    }
  }
}

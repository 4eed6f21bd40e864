package org.scantling.drawing;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.sayings.Sayings;
import org.scantling.shop.Recess;

/**
 * A rail let into the first post of row A: from its side, and below that sawn across from above.
 */
final class RailView implements DetailView {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double OVER_IN = 5;
  private static final double ALONG_IN = 8;
  private static final double APART_PX = 46;

  private final Subject subject;
  private final Subject.Lying post;
  private final Subject.Lying rail;
  private final int place;

  /**
   * @param place of the housing in the list of the post
   */
  private RailView(Subject subject, Subject.Lying post, Subject.Lying rail, int place) {
    this.subject = subject;
    this.post = post;
    this.rail = rail;
    this.place = place;
  }

  static Optional<RailView> of(Subject subject) {
    Optional<Subject.Lying> rail =
        subject
            .lying("rail")
            .filter(each -> each.middleAcrossIn() == 0)
            .min(Comparator.comparingDouble(Subject.Lying::alongIn));
    return rail.map(
        lying -> {
          Subject.Lying post =
              subject
                  .lying("post")
                  .filter(each -> each.middleAcrossIn() == 0 && each.alongIn() == 0)
                  .findFirst()
                  .orElseThrow();
          return new RailView(subject, post, lying, housing(post));
        });
  }

  private static int housing(Subject.Lying post) {
    for (int i = 0; i < post.shape().recesses().size(); i++) {
      if (post.shape().recesses().get(i).seat().role().equals("rail")) {
        return i;
      }
    }
    throw new IllegalArgumentException(post.mark() + " has no housing for its rail");
  }

  private Recess housing() {
    return post.shape().recesses().get(place);
  }

  private double halfPostIn() {
    return post.shape().breadthIn() / 2;
  }

  @Override
  public double wideIn() {
    return post.shape().breadthIn() + ALONG_IN;
  }

  @Override
  public void draw(Scene scene, double pxIn) {
    elevation(scene, pxIn);
    plan(scene, pxIn);
  }

  private Drawn.Figure figure(String of, double lengthIn) {
    return subject.lengths().of("detail " + post.mark() + " recess " + place + " " + of, lengthIn);
  }

  /** Heights are from the foot of the post. */
  private void elevation(Scene scene, double pxIn) {
    double footIn = post.place().first().upIn();
    Recess housing = housing();
    double innerIn = halfPostIn() - housing.depthIn();
    CutOut cut =
        new CutOut(
            scene,
            new ScenePoint(-halfPostIn() - 1, housing.fromIn() - OVER_IN),
            new ScenePoint(halfPostIn() + ALONG_IN, housing.toIn() + OVER_IN),
            pxIn);
    cut.timber(
        Scene.corners(
            new ScenePoint(-halfPostIn(), 0),
            new ScenePoint(halfPostIn(), post.shape().lengthIn())),
        LineClass.VISIBLE,
        post.mark());
    scene.box(
        new ScenePoint(innerIn, housing.fromIn()),
        new ScenePoint(halfPostIn(), housing.toIn()),
        Tone.PAPER,
        LineClass.VISIBLE);
    cut.timber(
        PieceOutline.inElevation(Projection.SIDE, rail.shape(), rail.place(), subject.fallRatio())
            .stream()
            .map(each -> each.plus(0, -footIn))
            .toList(),
        LineClass.VISIBLE,
        rail.mark());
    ScenePoint low = new ScenePoint(innerIn, housing.fromIn());
    ScenePoint high = new ScenePoint(innerIn, housing.toIn());
    scene.add(
        new Drawn.Dimension(
            Side.LEFT, 0, List.of(low, high), List.of(figure("width", housing.widthIn()))));
    scene.add(
        new Drawn.Dimension(
            Side.ABOVE,
            0,
            List.of(high, new ScenePoint(halfPostIn(), housing.toIn())),
            List.of(figure("depth", housing.depthIn()))));
    PieceName.add(scene, post, new ScenePoint(-halfPostIn() / 2, housing.fromIn() - OVER_IN / 2));
    PieceName.add(
        scene,
        rail,
        new ScenePoint(halfPostIn() + ALONG_IN / 2, (housing.fromIn() + housing.toIn()) / 2));
  }

  /** Row B, and with it the walk, lies above. */
  private void plan(Scene scene, double pxIn) {
    Recess housing = housing();
    double middleIn = housing.fromIn() - OVER_IN - APART_PX * pxIn - halfPostIn();
    double innerIn = halfPostIn() - housing.depthIn();
    double outerIn = middleIn - halfPostIn();
    scene.add(
        new Drawn.EndGrain(
            Scene.corners(
                new ScenePoint(-halfPostIn(), outerIn),
                new ScenePoint(halfPostIn(), middleIn + halfPostIn())),
            Tone.TIMBER,
            LineClass.CUT,
            post.mark()));
    scene.box(
        new ScenePoint(innerIn, outerIn),
        new ScenePoint(halfPostIn(), outerIn + housing.acrossIn()),
        Tone.PAPER,
        LineClass.CUT);
    double halfRailIn = rail.shape().breadthIn() / 2;
    new CutOut(
            scene,
            new ScenePoint(-halfPostIn(), outerIn - 1),
            new ScenePoint(halfPostIn() + ALONG_IN, middleIn + halfPostIn() + 1),
            pxIn)
        .timber(
            Scene.corners(
                new ScenePoint(innerIn, middleIn - halfRailIn),
                new ScenePoint(halfPostIn() + 2 * ALONG_IN, middleIn + halfRailIn)),
            LineClass.VISIBLE,
            rail.mark());
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(
                new ScenePoint(innerIn, outerIn),
                new ScenePoint(innerIn, outerIn + housing.acrossIn())),
            List.of(figure("across", housing.acrossIn()))));
  }

  @Override
  public List<String> notes() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("post", post.mark());
    blanks.put("rail", rail.mark());
    blanks.put("size", rail.shape().size());
    return List.of(SAYINGS.say("detail-rail.notes", blanks));
  }
}

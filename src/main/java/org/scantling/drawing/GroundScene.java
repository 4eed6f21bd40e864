package org.scantling.drawing;

import java.util.List;
import org.scantling.shop.SetOut;

/** The ground and the holes in it, cut through along the middles of the posts. */
final class GroundScene {
  private static final double STROKES_APART_PX = 26;
  private static final double STROKE_PX = 6;
  private static final int STROKES = 3;
  private static final double BRACKET_RATIO = 0.8;

  private final Subject subject;
  private final Scene scene;
  private final List<Double> middlesIn;
  private final double pxIn;

  /**
   * @param middlesIn of the holes, as they lie in the view
   * @param pxIn inches of the structure on one px of the sheet
   */
  GroundScene(Subject subject, Scene scene, List<Double> middlesIn, double pxIn) {
    this.subject = subject;
    this.scene = scene;
    this.middlesIn = List.copyOf(middlesIn);
    this.pxIn = pxIn;
  }

  /** A hole with its bed and what fills it, from the level of its own ground down. */
  void hole(SetOut.PostMark post, double middleIn, double slopeRatio) {
    SetOut.Ground ground = subject.setOut().ground();
    double halfIn = ground.holeIn() / 2;
    double groundIn = subject.groundIn(post);
    double bottomIn = subject.bottomIn(post);
    double bedIn = bottomIn + ground.bedIn() - ground.padIn();
    double leftIn = middleIn - halfIn;
    double rightIn = middleIn + halfIn;
    scene.area(
        List.of(
            new ScenePoint(leftIn, bedIn),
            new ScenePoint(rightIn, bedIn),
            new ScenePoint(rightIn, groundIn - slopeRatio * halfIn),
            new ScenePoint(leftIn, groundIn + slopeRatio * halfIn)),
        fill(),
        LineClass.CUT);
    if (ground.bedIn() > 0) {
      scene.box(
          new ScenePoint(leftIn, bottomIn),
          new ScenePoint(rightIn, bedIn),
          Tone.GRAVEL,
          LineClass.CUT);
    }
    if (ground.padIn() > 0) {
      scene.box(
          new ScenePoint(leftIn + halfIn / 4, bedIn),
          new ScenePoint(rightIn - halfIn / 4, bedIn + ground.padIn()),
          Tone.CONCRETE,
          LineClass.CUT);
    }
    if (subject.onPiers()) {
      bracket(middleIn, groundIn, subject.lineIn() - post.footBelowLineIn());
    }
  }

  private Tone fill() {
    if (subject.concrete()) {
      return Tone.CONCRETE;
    }
    return subject.inGravel() ? Tone.GRAVEL : Tone.SOIL;
  }

  /** The maker's bracket, by its outline, between the pier and the foot of the post. */
  private void bracket(double middleIn, double groundIn, double footIn) {
    double halfIn = subject.geometry().posts().breadthIn() / 2;
    scene.box(
        new ScenePoint(middleIn - BRACKET_RATIO * halfIn, groundIn),
        new ScenePoint(middleIn + BRACKET_RATIO * halfIn, footIn),
        Tone.METAL,
        LineClass.VISIBLE);
  }

  /** The line of the ground with the strokes of earth under it. */
  void line(double fromIn, double toIn, double slopeRatio) {
    double atIn = -slopeRatio;
    scene.line(
        new ScenePoint(fromIn, atIn * fromIn), new ScenePoint(toIn, atIn * toIn), LineClass.GROUND);
    for (double at = fromIn + 8 * pxIn; at < toIn - 16 * pxIn; at += STROKES_APART_PX * pxIn) {
      if (!overHole(at, STROKES * STROKE_PX * pxIn)) {
        for (int i = 0; i < STROKES; i++) {
          double strokeIn = at + i * 5 * pxIn;
          ScenePoint top = new ScenePoint(strokeIn, atIn * strokeIn - 2 * pxIn);
          scene.line(top, top.plus(-STROKE_PX * pxIn, -STROKE_PX * pxIn), LineClass.THIN);
        }
      }
    }
  }

  private boolean overHole(double rightIn, double reachIn) {
    double halfIn = subject.setOut().ground().holeIn() / 2 + reachIn;
    return middlesIn.stream().anyMatch(middleIn -> Math.abs(middleIn - rightIn) < halfIn);
  }

  /** The frost line or the rock, as deep below the ground everywhere. */
  void under(double fromIn, double toIn, double slopeRatio, double depthIn, LineClass line) {
    scene.line(
        new ScenePoint(fromIn, -slopeRatio * fromIn - depthIn),
        new ScenePoint(toIn, -slopeRatio * toIn - depthIn),
        line);
  }
}

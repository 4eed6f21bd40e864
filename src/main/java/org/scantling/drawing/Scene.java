package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** What is seen in one view, from the back to the front. */
final class Scene {
  private final List<Drawn> all = new ArrayList<>();

  Scene add(Drawn drawn) {
    all.add(drawn);
    return this;
  }

  Scene line(ScenePoint from, ScenePoint to, LineClass line) {
    return add(new Drawn.Line(from, to, line));
  }

  Scene area(List<ScenePoint> corners, Tone tone, LineClass line) {
    return add(new Drawn.Outline(corners, tone, line));
  }

  /** An upright box. */
  Scene box(ScenePoint low, ScenePoint high, Tone tone, LineClass line) {
    return area(corners(low, high), tone, line);
  }

  static List<ScenePoint> corners(ScenePoint low, ScenePoint high) {
    return List.of(
        low,
        new ScenePoint(high.rightIn(), low.upIn()),
        high,
        new ScenePoint(low.rightIn(), high.upIn()));
  }

  List<Drawn> all() {
    return List.copyOf(all);
  }
}

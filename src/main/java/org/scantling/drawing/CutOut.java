package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** A part of the structure cut out of it by a box: where timber runs on, its edge is broken. */
final class CutOut {
  private static final double HAIR_IN = 1e-6;
  private static final double ZIGZAG_PX = 4;

  private final Scene scene;
  private final ScenePoint low;
  private final ScenePoint high;
  private final double pxIn;

  /**
   * @param low left lower corner of the box
   * @param high right upper corner
   * @param pxIn inches of the structure on one px of the sheet
   */
  CutOut(Scene scene, ScenePoint low, ScenePoint high, double pxIn) {
    this.scene = scene;
    this.low = low;
    this.high = high;
    this.pxIn = pxIn;
  }

  /** What of a timber lies in the box. */
  void timber(List<ScenePoint> corners, LineClass line, String mark) {
    area(corners, Tone.TIMBER, line, mark);
  }

  void area(List<ScenePoint> corners, Tone tone, LineClass line, String mark) {
    List<ScenePoint> left = within(corners);
    if (left.size() < 3) {
      return;
    }
    scene.add(new Drawn.Outline(left, tone, LineClass.NONE, mark));
    for (int i = 0; i < left.size(); i++) {
      ScenePoint from = left.get(i);
      ScenePoint to = left.get((i + 1) % left.size());
      if (onEdge(from, to)) {
        broken(from, to);
      } else {
        scene.line(from, to, line);
      }
    }
  }

  private List<ScenePoint> within(List<ScenePoint> corners) {
    List<ScenePoint> across =
        Clip.area(corners, new Windows.Stretch(low.rightIn(), high.rightIn(), 0));
    List<ScenePoint> turned =
        Clip.area(turned(across), new Windows.Stretch(low.upIn(), high.upIn(), 0));
    return distinct(turned(turned));
  }

  private static List<ScenePoint> turned(List<ScenePoint> corners) {
    return corners.stream()
        .map(each -> new ScenePoint(/* rightIn= */ each.upIn(), /* upIn= */ each.rightIn()))
        .toList();
  }

  private static List<ScenePoint> distinct(List<ScenePoint> corners) {
    List<ScenePoint> distinct = new ArrayList<>();
    for (ScenePoint each : corners) {
      if (distinct.isEmpty() || apart(each, distinct.get(distinct.size() - 1))) {
        distinct.add(each);
      }
    }
    if (distinct.size() > 1 && !apart(distinct.get(0), distinct.get(distinct.size() - 1))) {
      distinct.remove(distinct.size() - 1);
    }
    return distinct;
  }

  private static boolean apart(ScenePoint one, ScenePoint other) {
    return Math.hypot(one.rightIn() - other.rightIn(), one.upIn() - other.upIn()) > HAIR_IN;
  }

  private boolean onEdge(ScenePoint from, ScenePoint to) {
    return both(from.rightIn(), to.rightIn(), low.rightIn())
        || both(from.rightIn(), to.rightIn(), high.rightIn())
        || both(from.upIn(), to.upIn(), low.upIn())
        || both(from.upIn(), to.upIn(), high.upIn());
  }

  private static boolean both(double one, double other, double edge) {
    return Math.abs(one - edge) < HAIR_IN && Math.abs(other - edge) < HAIR_IN;
  }

  /** A thin line with a kink. */
  private void broken(ScenePoint from, ScenePoint to) {
    double longIn = Math.hypot(to.rightIn() - from.rightIn(), to.upIn() - from.upIn());
    double kinkIn = Math.min(ZIGZAG_PX * pxIn, longIn / 6);
    double alongRight = (to.rightIn() - from.rightIn()) / longIn;
    double alongUp = (to.upIn() - from.upIn()) / longIn;
    ScenePoint middle = from.towards(to, 0.5);
    List<ScenePoint> line =
        List.of(
            from,
            middle.plus(-2 * kinkIn * alongRight, -2 * kinkIn * alongUp),
            middle.plus(
                -kinkIn * alongRight - kinkIn * alongUp, -kinkIn * alongUp + kinkIn * alongRight),
            middle.plus(
                kinkIn * alongRight + kinkIn * alongUp, kinkIn * alongUp - kinkIn * alongRight),
            middle.plus(2 * kinkIn * alongRight, 2 * kinkIn * alongUp),
            to);
    for (int i = 0; i + 1 < line.size(); i++) {
      scene.line(line.get(i), line.get(i + 1), LineClass.THIN);
    }
  }
}

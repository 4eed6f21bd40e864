package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** The mark of a piece on it, where there is room. */
final class PieceName {
  private static final double[] DOWN_PX = {4, 16, -8, 28};
  private static final double BESIDE_PX = 6;

  private PieceName() {}

  static void add(Scene scene, Subject.Lying of, ScenePoint at) {
    List<Drawn.Spot> spots = new ArrayList<>();
    for (double downPx : DOWN_PX) {
      spots.add(new Drawn.Spot(at, 0, downPx, Anchor.MIDDLE));
      spots.add(new Drawn.Spot(at, BESIDE_PX, downPx, Anchor.START));
      spots.add(new Drawn.Spot(at, -BESIDE_PX, downPx, Anchor.END));
    }
    scene.add(new Drawn.Note(of.mark(), Lettering.MARK, spots));
  }
}

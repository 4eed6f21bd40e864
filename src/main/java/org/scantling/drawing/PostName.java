package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import org.scantling.shop.SetOut;

/** A post under its hole: its stake on one side of the middle line, its mark on the other. */
final class PostName {
  private static final double BESIDE_PX = 6;

  /** Lower where the frost line lies right under the hole. */
  private static final double[] UNDER_PX = {18, 24, 30, 36};

  private PostName() {}

  static void add(Scene scene, SetOut.PostMark post, ScenePoint under) {
    scene.add(new Drawn.Note(post.name(), Lettering.MARK, spots(under, -BESIDE_PX, Anchor.END)));
    scene.add(new Drawn.Note(post.mark(), Lettering.NOTE, spots(under, BESIDE_PX, Anchor.START)));
  }

  private static List<Drawn.Spot> spots(ScenePoint under, double besidePx, Anchor anchor) {
    List<Drawn.Spot> spots = new ArrayList<>();
    for (double underPx : UNDER_PX) {
      spots.add(new Drawn.Spot(under, besidePx, underPx, anchor));
    }
    return spots;
  }
}

package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.BaseDesign;

/**
 * The tail of the crossbeams, drawn on the new depth in the proportions of the proven one. The drop
 * is the square nose that is left below the top edge; from its foot the cut runs back to the
 * underside.
 */
final class TailTemplate {
  private static final int POINTS_OF_A_CURVE = 6;

  private final Built built;

  TailTemplate(Built built) {
    this.built = built;
  }

  /** The new depth over the proven one. */
  double scaleRatio() {
    return built.member("crossbeam").depthIn() / built.provenDepthIn();
  }

  EndCut cut() {
    return built.endCut().map(this::shaped).orElse(EndCut.square());
  }

  private EndCut shaped(BaseDesign.EndCut proven) {
    double depthIn = built.member("crossbeam").depthIn();
    double noseIn = proven.dropIn() * scaleRatio();
    double runIn = proven.runIn() * scaleRatio();
    if (proven.kind().equals("plumb") || !(runIn > 0) || noseIn >= depthIn) {
      return EndCut.square();
    }
    boolean curved = proven.kind().equals("curve");
    List<EndCut.Corner> outline = new ArrayList<>();
    outline.add(corner(0, 0));
    int points = curved ? POINTS_OF_A_CURVE : 1;
    for (int i = 0; i <= points; i++) {
      // A quarter of an ellipse: upright at the nose, level at the underside. A slant is its chord.
      double turn = Math.PI / 2 * i / points;
      double backIn = runIn * (1 - Math.cos(turn));
      outline.add(corner(backIn, noseIn + (depthIn - noseIn) * Math.sin(turn)));
    }
    return new EndCut.Shaped(curved ? "curve" : "slant", outline);
  }

  private EndCut.Corner corner(double backIn, double downIn) {
    return new EndCut.Corner(built.tape().nearest(backIn), built.tape().nearest(downIn));
  }
}

package org.scantling.drawing;

import java.util.List;

/**
 * What is cut through, by the signs of drafting: strokes of earth, stones of gravel, triangles and
 * grains of concrete.
 *
 * <p>Source: common practice, no source; the signs are those of section drawings everywhere.
 */
final class Hatch {
  private static final double STONE_PX = 3.2;
  private static final double STONES_APART_PX = 10;
  private static final double GRAINS_APART_PX = 17;
  private static final double EARTH_APART_PX = 7;
  private static final double EARTH_DEEP_PX = 15;
  private static final double TAMPED_APART_PX = 15;
  private static final double TAMPED_LONG_PX = 6;

  /** How far stones are out of line, by turns, so that no pattern shows. */
  private static final double[] OUT_OF_LINE = {0, 0.31, -0.24, 0.12, -0.36, 0.22, -0.1};

  private final Scene scene;
  private final double pxIn;

  /**
   * @param pxIn inches of the structure on one px of the sheet
   */
  Hatch(Scene scene, double pxIn) {
    this.scene = scene;
    this.pxIn = pxIn;
  }

  /**
   * What is filled, about a post in its middle.
   *
   * @param keepIn half the breadth of the post, 0 for none
   * @param footIn height from which the post stands in it
   */
  record Band(
      double leftIn, double rightIn, double lowIn, double highIn, double keepIn, double footIn) {
    /** True of a sign that lies wholly in it and not on the post. */
    boolean holds(ScenePoint middle, double reachIn) {
      boolean onPost =
          keepIn > 0
              && Math.abs(middle.rightIn()) < keepIn + reachIn
              && middle.upIn() > footIn - reachIn;
      return !onPost
          && middle.rightIn() - reachIn > leftIn
          && middle.rightIn() + reachIn < rightIn
          && middle.upIn() - reachIn > lowIn
          && middle.upIn() + reachIn < highIn;
    }
  }

  private interface Sign {
    void at(ScenePoint middle, int turn);
  }

  private void strew(Band band, double apartPx, double reachPx, Sign sign) {
    double apartIn = apartPx * pxIn;
    int turn = 0;
    int rows = (int) Math.ceil((band.highIn() - band.lowIn()) / apartIn);
    int columns = (int) Math.ceil((band.rightIn() - band.leftIn()) / apartIn);
    for (int row = 0; row <= rows; row++) {
      for (int column = 0; column <= columns; column++) {
        double out = OUT_OF_LINE[turn % OUT_OF_LINE.length] * apartIn;
        double staggered = (row % 2) * apartIn / 2;
        ScenePoint middle =
            new ScenePoint(
                band.leftIn() + (column + 0.5) * apartIn + staggered + out / 2,
                band.lowIn() + (row + 0.5) * apartIn + out);
        if (band.holds(middle, reachPx * pxIn)) {
          sign.at(middle, turn);
        }
        turn++;
      }
    }
  }

  void gravel(Band band) {
    strew(
        band,
        STONES_APART_PX,
        STONE_PX + 1,
        (middle, turn) ->
            scene.add(
                new Drawn.Round(
                    middle, (STONE_PX - turn % 3 * 0.8) * pxIn, Tone.NONE, LineClass.THIN)));
  }

  void concrete(Band band) {
    strew(
        band,
        GRAINS_APART_PX,
        STONE_PX + 1,
        (middle, turn) -> {
          double r = STONE_PX * pxIn;
          if (turn % 3 == 0) {
            scene.area(
                List.of(middle.plus(-r, -r / 2), middle.plus(r, -r / 2), middle.plus(r / 3, r)),
                Tone.NONE,
                LineClass.THIN);
          } else {
            scene.add(new Drawn.Round(middle, 0.7 * pxIn, Tone.INK, LineClass.NONE));
          }
        });
  }

  /** Soil that was put back: short level strokes. */
  void tamped(Band band) {
    strew(
        band,
        TAMPED_APART_PX,
        TAMPED_LONG_PX,
        (middle, turn) ->
            scene.line(
                middle.plus(-TAMPED_LONG_PX / 2 * pxIn, 0),
                middle.plus(TAMPED_LONG_PX / 2 * pxIn, 0),
                LineClass.THIN));
  }

  /** Ground that nobody dug, along both sides of a hole and under it. */
  void earth(double leftIn, double rightIn, double bottomIn, double groundIn) {
    double deepIn = EARTH_DEEP_PX * pxIn;
    double apartIn = EARTH_APART_PX * pxIn;
    for (double up = bottomIn; up < groundIn - 2 * deepIn; up += apartIn) {
      double strokeIn = deepIn * (Math.floorMod(Math.round((up - bottomIn) / apartIn), 2) + 1) / 2;
      scene.line(
          new ScenePoint(leftIn - strokeIn, up),
          new ScenePoint(leftIn, up + strokeIn),
          LineClass.THIN);
      scene.line(
          new ScenePoint(rightIn, up),
          new ScenePoint(rightIn + strokeIn, up + strokeIn),
          LineClass.THIN);
    }
    for (double right = leftIn; right < rightIn - apartIn / 2; right += apartIn) {
      double strokeIn = deepIn * (Math.floorMod(Math.round((right - leftIn) / apartIn), 2) + 1) / 2;
      scene.line(
          new ScenePoint(right, bottomIn - strokeIn),
          new ScenePoint(
              Math.min(right + strokeIn, rightIn),
              bottomIn - strokeIn + Math.min(strokeIn, rightIn - right)),
          LineClass.THIN);
    }
  }
}

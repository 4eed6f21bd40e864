package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BentAxis;
import org.scantling.timber.Column;
import org.scantling.timber.CombinedStress;
import org.scantling.timber.Rectangle;

/**
 * A post where the housing of a rail cuts into it: pressed and bent on what is left.
 *
 * @param housedFaces faces with a housing: 1 leaves a section whose middle lies off the post's
 * @param left what is left, its depth along the bending
 * @param pressedLb load at the housing, the post above it counted
 * @param momentInLb bending by the wind there
 * @param along true where it is bent along the walk, in which the housings are cut
 * @param offsets how far the load misses the middle of what is left
 * @param column pressure on the whole post, buckling counted
 * @param bending by the wind on what is left
 * @param stability of rolling over
 */
public record NotchScene(
    LoadCombination combination,
    int housedFaces,
    Rectangle left,
    double pressedLb,
    double momentInLb,
    boolean along,
    Offsets offsets,
    Column column,
    Bending bending,
    BeamStability stability) {

  /**
   * How far the load misses the middle of what is left. A housing in one face moves that middle
   * away from it by half its depth, besides what a load misses the middle of any post.
   *
   * @param bentIn along the bending
   * @param crossIn square to it
   */
  public record Offsets(double bentIn, double crossIn) {

    /**
     * @param missIn what the load misses the middle of any post
     */
    static Offsets of(PostChecks.Standing standing, int faces, boolean along, double missIn) {
      double shiftIn = faces == 1 ? standing.housingDepthIn() / 2 : 0;
      return along ? new Offsets(missIn + shiftIn, 0) : new Offsets(missIn, shiftIn);
    }
  }

  /** Pressure on what is left. */
  public double stressPsi() {
    return pressedLb / left.areaIn2();
  }

  /** Pressure and bending together. */
  public CombinedStress combined() {
    Bending none = Bending.of(0, left.turned(), bending.allowable());
    return CombinedStress.atCut(
        column,
        left.areaIn2(),
        new BentAxis(bending, left.depthIn(), offsets.bentIn()),
        new BentAxis(none, left.breadthIn(), offsets.crossIn()),
        stability);
  }

  double ratio() {
    return combined().check().ratio();
  }
}

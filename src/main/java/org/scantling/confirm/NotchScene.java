package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BentAxis;
import org.scantling.timber.Column;
import org.scantling.timber.CombinedStress;
import org.scantling.timber.Rectangle;

/**
 * A post where the housing of a rail cuts into it: pressed and bent on what is left.
 *
 * @param housing what is cut into the post
 * @param left what is left, its depth along the bending
 * @param pressed load at the housing, the post above it counted
 * @param push of the wind on the post
 * @param momentInLb bending by the wind at the housing
 * @param along true where it is bent along the walk, in which the housings are cut
 * @param offsets how far the load misses the middle of what is left
 * @param column pressure on the whole post, buckling counted
 * @param bending by the wind on what is left
 * @param stability of rolling over
 */
public record NotchScene(
    LoadCombination combination,
    Housing housing,
    Rectangle left,
    PostForce pressed,
    SidePush push,
    double momentInLb,
    boolean along,
    Offsets offsets,
    Column column,
    Bending bending,
    BeamStability stability)
    implements Calculated {

  /**
   * The recesses for a rail.
   *
   * @param faces with a recess: 1 leaves a section whose middle lies off the post's
   * @param depthIn of each
   * @param atIn height at which the post is worked there
   */
  public record Housing(int faces, double depthIn, double atIn) {}

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
    return combined().pressurePsi();
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

  /** What is left under its load and its bending, and the sum of both. */
  @Override
  public List<FormulaLine> lines() {
    CombinedStress sum = combined();
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(left(along ? left.depthIn() : left.breadthIn()));
    lines.add(pressure(sum.pressurePsi(), along ? left.depthIn() : left.breadthIn()));
    lines.add(bent());
    lines.addAll(stability.lines());
    lines.addAll(bending.lines());
    lines.addAll(sum.lines());
    return lines;
  }

  private FormulaLine left(double leftIn) {
    return FormulaLine.of("left", Measure.inches(leftIn))
        .with("breadth", Measure.inches(column.section().breadthIn()))
        .with("count", Measure.count(housing.faces()))
        .with("depth", Measure.inches(housing.depthIn()));
  }

  private FormulaLine pressure(double stressPsi, double leftIn) {
    return FormulaLine.of("pressure", Measure.psi(stressPsi))
        .with("load", Measure.pounds(column.forceLb()))
        .with("breadth", Measure.inches(column.section().breadthIn()))
        .with("left-depth", Measure.inches(leftIn));
  }

  private FormulaLine bent() {
    return FormulaLine.of("bent", Measure.inchPounds(momentInLb))
        .with("factor", Measure.ratio(combination.factor(LoadKind.WIND)))
        .with("top", Measure.pounds(push.topLb()))
        .with("arm", Measure.inches(push.topAtIn() - housing.atIn()))
        .with("spread", Measure.pounds(push.spreadLb()))
        .with("beyond", Measure.inches(push.heightIn() - housing.atIn()))
        .with("height", Measure.inches(push.heightIn()));
  }
}

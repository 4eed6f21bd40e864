package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard a post is worked by load and bending together, in both directions.
 *
 * @param column the whole post under its load
 * @param cut true where it is pressed and bent on what a cut leaves of it
 * @param pressurePsi fc, on what carries it
 * @param edgewise bending along the section's depth
 * @param flatwise bending along its breadth
 * @param stability of bending along the depth
 * @param bowingRatio fc of the whole post over F_cE1, how far it is on its way to bowing out
 * @param axialTerm (fc/Fc')²
 * @param edgewiseTerm the share of bending along the section's depth
 * @param flatwiseTerm the share of bending along its breadth
 * @param edgewiseReserve 1 − fc/F_cE1, what is left before bowing out along the depth
 * @param flatwiseReserve 1 − fc/F_cE2 − (fb1/F_bE)², the same along the breadth
 * @param interactionRatio the sum of the terms, cut off at {@link #BEYOND_BUCKLING}
 */
public record CombinedStress(
    Column column,
    boolean cut,
    double pressurePsi,
    BentAxis edgewise,
    BentAxis flatwise,
    BeamStability stability,
    double bowingRatio,
    double axialTerm,
    double edgewiseTerm,
    double flatwiseTerm,
    double edgewiseReserve,
    double flatwiseReserve,
    double interactionRatio)
    implements Calculated {
  /** The ratio that stands for a post that bows out before it is bent. */
  public static final double BEYOND_BUCKLING = Check.LEANS_OVER;

  /**
   * Load and bending in both directions against the interaction limit.
   *
   * <p>With both eccentricities 0 this is the plain form; otherwise the axial load bends the post
   * by its offset as well. Axis 1 bends along the section's depth, axis 2 along its breadth.
   *
   * @param column the post under its axial load; its depth is axis 1
   * @param edgewise bending along the depth, Fb1' with C_L
   * @param flatwise bending along the breadth, Fb2' with C_fu where it applies
   * @param stability of axis 1, for F_bE
   * @return the terms and their sum
   *     <p>Source: NDS, 2018, 3.9.2; with eccentricity 15.4.1, from memory.
   */
  public static CombinedStress of(
      Column column, BentAxis edgewise, BentAxis flatwise, BeamStability stability) {
    return of(column, false, column.areaIn2(), new Bent(edgewise, flatwise, stability));
  }

  /**
   * The same where the post is cut: pressed and bent on what the cut leaves, while it bows out as
   * the whole post does, of which the cut is a short part.
   *
   * @param column the whole post under its axial load; its depth is axis 1
   * @param netAreaIn2 what the cut leaves, above 0
   * @param edgewise bending along the depth that is left
   * @param flatwise bending along the breadth that is left
   * @param stability of axis 1, for F_bE
   * @return the terms and their sum
   *     <p>Source: NDS, 2018, 3.9.2 and 3.1.2; with eccentricity 15.4.1, from memory.
   */
  public static CombinedStress atCut(
      Column column,
      double netAreaIn2,
      BentAxis edgewise,
      BentAxis flatwise,
      BeamStability stability) {
    Require.positive("net area", netAreaIn2, "in²");
    return of(column, true, netAreaIn2, new Bent(edgewise, flatwise, stability));
  }

  private record Bent(BentAxis edgewise, BentAxis flatwise, BeamStability stability) {}

  private static CombinedStress of(Column column, boolean cut, double areaIn2, Bent bent) {
    BentAxis edgewise = bent.edgewise();
    BentAxis flatwise = bent.flatwise();
    BeamStability stability = bent.stability();
    double fc = column.forceLb() / areaIn2;
    double axial = fc / column.allowable().psi();
    double share1 = column.stressPsi() / column.aboutDepth().criticalStressPsi();
    double share2 = column.stressPsi() / column.aboutBreadth().criticalStressPsi();
    double offset1Psi = fc * edgewise.eccentricRatio();
    double rolling = (edgewise.bending().stressPsi() + offset1Psi) / stability.criticalStressPsi();
    double reserve1 = 1 - share1;
    double reserve2 = 1 - share2 - rolling * rolling;
    double bent1Psi = edgewise.bending().stressPsi() + offset1Psi * (1 + 0.234 * share1);
    double grown2 = 1 + 0.234 * (share2 + rolling * rolling);
    double bent2Psi = flatwise.bending().stressPsi() + fc * flatwise.eccentricRatio() * grown2;
    double term1 = term(bent1Psi, edgewise.bending(), reserve1);
    double term2 = term(bent2Psi, flatwise.bending(), reserve2);
    boolean bowsOut = !(reserve1 > 0 && reserve2 > 0);
    double sum = bowsOut ? BEYOND_BUCKLING : axial * axial + term1 + term2;
    return new CombinedStress(
        column,
        cut,
        fc,
        edgewise,
        flatwise,
        stability,
        share1,
        axial * axial,
        term1,
        term2,
        reserve1,
        reserve2,
        Math.min(sum, BEYOND_BUCKLING));
  }

  /** True where the post bows or rolls out before the bending counts. */
  public boolean bucklesFirst() {
    return interactionRatio >= BEYOND_BUCKLING;
  }

  /** The sum of the terms against 1. */
  public Check check() {
    return new Check(interactionRatio, 1);
  }

  private static double term(double bentPsi, Bending bending, double reserve) {
    return reserve > 0
        ? Math.min(BEYOND_BUCKLING, bentPsi / (bending.allowable().psi() * reserve))
        : BEYOND_BUCKLING;
  }

  /**
   * The sum in the form that its bending asks for. The printed sum bows out alike both ways, as a
   * square post does.
   */
  @Override
  public List<FormulaLine> lines() {
    return cut ? List.of(bowing(), atCut()) : List.of(whole());
  }

  private FormulaLine bowing() {
    return FormulaLine.of("bowing", Measure.ratio(bowingRatio))
        .with("whole", Measure.psi(column.stressPsi()))
        .with("euler", Measure.psi(column.aboutDepth().criticalStressPsi()));
  }

  private FormulaLine whole() {
    boolean both = flatwise.bending().momentInLb() > 0;
    FormulaLine line =
        sum(both ? "combined-both" : "combined")
            .with("offset", Measure.ratio(edgewise.eccentricRatio()))
            .with("euler", Measure.psi(column.aboutDepth().criticalStressPsi()));
    return both
        ? line.with("cross", Measure.psi(flatwise.bending().stressPsi()))
            .with("crossed", Measure.psi(flatwise.bending().allowable().psi()))
            .with("rolling", Measure.psi(stability.criticalStressPsi()))
        : line;
  }

  private FormulaLine atCut() {
    boolean both = flatwise.eccentricityIn() > 0;
    FormulaLine line =
        sum(both ? "sum-across" : "sum")
            .with("arm", Measure.inches(edgewise.eccentricityIn()))
            .with("depth", Measure.inches(edgewise.depthIn()))
            .with("bowing", Measure.ratio(bowingRatio));
    return both
        ? line.with("less", Measure.inches(flatwise.eccentricityIn()))
            .with("breadth", Measure.inches(flatwise.depthIn()))
            .with("solved", Measure.psi(stability.criticalStressPsi()))
        : line;
  }

  private FormulaLine sum(String id) {
    return FormulaLine.of(id, Measure.ratio(interactionRatio))
        .with("pressed", Measure.psi(pressurePsi))
        .with("allowed", Measure.psi(column.allowable().psi()))
        .with("bent", Measure.psi(edgewise.bending().stressPsi()))
        .with("bending", Measure.psi(edgewise.bending().allowable().psi()));
  }
}

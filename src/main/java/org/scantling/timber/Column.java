package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard a post is pressed along its length.
 *
 * @param forceLb the load
 * @param section its whole section
 * @param areaIn2 area of that section
 * @param stressPsi fc
 * @param aboutDepth stability for bowing along the section's depth
 * @param aboutBreadth stability for bowing along its breadth
 * @param allowable Fc' with all its factors, the smaller C_P among them
 */
public record Column(
    double forceLb,
    Rectangle section,
    double areaIn2,
    double stressPsi,
    ColumnStability aboutDepth,
    ColumnStability aboutBreadth,
    AdjustedStress allowable)
    implements Calculated {

  /**
   * The stress in a post against what it may be, the worse axis governing.
   *
   * @param forceLb load, 0 or more, downward
   * @param section the post's section
   * @param bracing the buckling lengths of both axes
   * @param values adjusted values of the piece
   * @return the stress and its limit
   *     <p>Source: NDS, 2018, 3.6.3 and 3.7.1. Worked: 3.5 × 7.25 in, le 96 in, Fc* 1000 psi, E
   *     min' 474 452 psi may carry 11.3 kip.
   */
  public static Column of(
      double forceLb, Rectangle section, Bracing bracing, AdjustedValues values) {
    Require.zeroOrMore("load on the post", forceLb, "lb");
    double c = bracing.straightnessFactor();
    ColumnStability depth = ColumnStability.of(bracing.alongDepth(), section.depthIn(), values, c);
    ColumnStability breadth =
        ColumnStability.of(bracing.alongBreadth(), section.breadthIn(), values, c);
    double areaIn2 = section.areaIn2();
    Factor smaller = slender(depth, breadth).asFactor();
    AdjustedStress allowable = values.compression().with(smaller);
    return new Column(forceLb, section, areaIn2, forceLb / areaIn2, depth, breadth, allowable);
  }

  /**
   * The buckling lengths of a post.
   *
   * @param alongDepth le = Ke·l for bowing along the section's depth
   * @param alongBreadth le for bowing along its breadth
   * @param straightnessFactor c, 0.8 for sawn timber, above 0 and not above 1
   */
  public record Bracing(
      BucklingLength alongDepth, BucklingLength alongBreadth, double straightnessFactor) {
    public Bracing {
      Require.positive("straightness factor c", straightnessFactor, "");
    }

    /** Of lengths that are taken as they are, 0 or more. */
    public Bracing(double alongDepthIn, double alongBreadthIn, double straightnessFactor) {
      this(
          new BucklingLength(
              1, Require.zeroOrMore("buckling length along the depth", alongDepthIn, "in")),
          new BucklingLength(
              1, Require.zeroOrMore("buckling length along the breadth", alongBreadthIn, "in")),
          straightnessFactor);
    }

    /** The same both ways. */
    public Bracing(BucklingLength both, double straightnessFactor) {
      this(both, both, straightnessFactor);
    }
  }

  /** The stability of the axis that governs. */
  public ColumnStability governing() {
    return slender(aboutDepth, aboutBreadth);
  }

  /** fc against Fc'. */
  public Check check() {
    return new Check(stressPsi, allowable.psi());
  }

  private static ColumnStability slender(ColumnStability one, ColumnStability other) {
    return one.slendernessRatio() >= other.slendernessRatio() ? one : other;
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(
        FormulaLine.of("pressure", Measure.psi(stressPsi))
            .with("load", Measure.pounds(forceLb))
            .with("breadth", Measure.inches(section.breadthIn()))
            .with("depth", Measure.inches(section.depthIn())));
    lines.addAll(governing().lines());
    // The product of all factors, of which Fc* holds all but C_P.
    lines.add(
        FormulaLine.of("compression-allowed", Measure.psi(allowable.psi()))
            .with("star", Measure.psi(governing().startStressPsi()))
            .with("buckled", Measure.ratio(governing().stabilityFactor())));
    return lines;
  }
}

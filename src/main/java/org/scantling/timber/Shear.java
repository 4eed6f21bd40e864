package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard a beam is sheared along the grain.
 *
 * @param shearLb the size of the shear force
 * @param section that carries it
 * @param areaIn2 its area
 * @param stressPsi fv at mid-depth
 * @param allowable Fv' with all its factors
 */
public record Shear(
    double shearLb, Rectangle section, double areaIn2, double stressPsi, AdjustedStress allowable)
    implements Calculated {

  /**
   * The shear stress in a beam without notch against what it may be.
   *
   * @param shearLb shear force, either sign
   * @param section the section there
   * @param allowable Fv'
   * @return the stress and its limit
   *     <p>Source: NDS, 2018, 3.4.2. Worked: 500 lb on 1.5 × 5.5 in gives 90.9 psi.
   */
  public static Shear of(double shearLb, Rectangle section, AdjustedStress allowable) {
    double sizeLb = Math.abs(Require.finite("shear force", shearLb, "lb"));
    double areaIn2 = section.areaIn2();
    return new Shear(sizeLb, section, areaIn2, 3 * sizeLb / (2 * areaIn2), allowable);
  }

  /**
   * The shear that counts when an even load within one depth of the support is left out.
   *
   * <p>Only for a beam that bears on its lower edge, is loaded on its upper edge and has no notch
   * there: never for loads that hang.
   *
   * @param supportShearLb shear at the support, 0 or more
   * @param loadLbPerIn the even load, 0 or more
   * @param depthIn depth of the beam, above 0
   * @return the shear one depth away, never below 0
   *     <p>Source: NDS, 2018, 3.4.3.1. Worked: 500 lb, 10 lb/in, 5.5 in deep gives 445 lb.
   */
  public static double oneDepthAwayLb(double supportShearLb, double loadLbPerIn, double depthIn) {
    Require.zeroOrMore("shear at the support", supportShearLb, "lb");
    Require.zeroOrMore("even load", loadLbPerIn, "lb/in");
    Require.positive("depth", depthIn, "in");
    return Math.max(0, supportShearLb - loadLbPerIn * depthIn);
  }

  /** fv against Fv'. */
  public Check check() {
    return new Check(stressPsi, allowable.psi());
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("shear", Measure.psi(stressPsi))
            .with("shear", Measure.pounds(shearLb))
            .with("breadth", Measure.inches(section.breadthIn()))
            .with("depth", Measure.inches(section.depthIn())),
        allowable.allowed("shear-allowed"));
  }
}

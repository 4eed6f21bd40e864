package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard a beam is bent.
 *
 * @param momentInLb the size of the moment
 * @param section that carries it, net of notches
 * @param sectionModulusIn3 of that section
 * @param stressPsi fb
 * @param allowable Fb' with all its factors
 */
public record Bending(
    double momentInLb,
    Rectangle section,
    double sectionModulusIn3,
    double stressPsi,
    AdjustedStress allowable)
    implements Calculated {

  /**
   * The bending stress in a beam against what it may be.
   *
   * @param momentInLb bending moment, either sign
   * @param section the section there; at a notch, {@link Rectangle#notched} of it
   * @param values adjusted values of the piece
   * @param stability C_L of the beam; its own slenderness check stands beside this one
   * @return the stress and its limit
   *     <p>Source: NDS, 2018, 3.3.1 and 3.3.2. Worked: 6000 in·lb on 1.5 × 5.5 in gives 793 psi.
   */
  public static Bending of(
      double momentInLb, Rectangle section, AdjustedValues values, BeamStability stability) {
    return of(momentInLb, section, values.bending().with(stability.asFactor()));
  }

  /** The same against a bending value that already holds C_L, or needs none. */
  public static Bending of(double momentInLb, Rectangle section, AdjustedStress allowable) {
    double sizeInLb = Math.abs(Require.finite("bending moment", momentInLb, "in·lb"));
    double modulusIn3 = section.sectionModulusIn3();
    return new Bending(sizeInLb, section, modulusIn3, sizeInLb / modulusIn3, allowable);
  }

  /** fb against Fb'. */
  public Check check() {
    return new Check(stressPsi, allowable.psi());
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("bending", Measure.psi(stressPsi))
            .with("moment", Measure.inchPounds(momentInLb))
            .with("breadth", Measure.inches(section.breadthIn()))
            .with("depth", Measure.inches(section.depthIn())),
        allowable.allowed("bending-allowed"));
  }
}

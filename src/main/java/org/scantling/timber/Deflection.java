package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How far a timber sags in time.
 *
 * @param permanentIn elastic sag under the loads that stay, 0 or more
 * @param passingIn elastic sag under the loads that come and go, 0 or more
 * @param creepFactor K_cr, 1 or more (1.5 seasoned and dry, 2.0 wet or unseasoned)
 */
public record Deflection(double permanentIn, double passingIn, double creepFactor)
    implements Calculated {
  private static final double TAIL_COUNTS_TWICE = 2;

  public Deflection {
    Require.zeroOrMore("permanent sag", permanentIn, "in");
    Require.zeroOrMore("passing sag", passingIn, "in");
    Require.within("creep factor", creepFactor, "", 1, 10);
  }

  /**
   * The sag in the end.
   *
   * @return K_cr times the permanent part and the passing part once, in inches
   *     <p>Source: NDS, 2018, 3.5.2. Worked: 0.2 in for good, 0.1 in passing, K_cr 2 gives 0.5 in.
   */
  public double totalIn() {
    return creepFactor * permanentIn + passingIn;
  }

  /** The sag in the end of a span against span/{@code spanDivisor}. */
  public Check check(double spanIn, double spanDivisor) {
    Require.positive("span", spanIn, "in");
    Require.positive("span divisor", spanDivisor, "");
    return new Check(totalIn(), spanIn / spanDivisor);
  }

  /** The sag in the end of a tail's tip; twice its length counts as span (IBC 2018, 1604.3). */
  public Check checkOverhang(double overhangIn, double spanDivisor) {
    return check(TAIL_COUNTS_TWICE * overhangIn, spanDivisor);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("sag", Measure.inches(totalIn()))
            .with("creep", Measure.ratio(creepFactor))
            .with("still", Measure.inches(permanentIn))
            .with("passing", Measure.inches(passingIn)));
  }
}

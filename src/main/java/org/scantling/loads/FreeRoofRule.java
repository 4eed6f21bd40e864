package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Require;

/**
 * What the standard gives for wind on a roof without walls, and how much of the top is covered.
 *
 * @param gustFactor G, above zero
 * @param coveredRatio share of the top that timber and leaves cover, 0 to 1
 * @param cases load cases of the figure, at least one
 *     <p>Source: ASCE 7, 2016, section 27.3.2; the covered share is common practice
 */
public record FreeRoofRule(
    double gustFactor, double coveredRatio, List<NetPressureCoefficients> cases) {
  public FreeRoofRule {
    Require.positive("gust factor G", gustFactor, "");
    Require.share("covered share", coveredRatio);
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("a free roof has 0 load cases and must have at least 1");
    }
    cases = List.copyOf(cases);
  }
}

package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * The velocity pressure exposure coefficient at one height over one kind of ground; {@link
 * ExposureConstants#at} finds it.
 *
 * @param ground how the wind grows with height there
 * @param countedIn the height that counts, in, not under the lowest
 * @param factor K_z, above zero
 *     <p>Source: ASCE 7, 2016, table 26.10-1
 */
public record HeightFactor(ExposureConstants ground, double countedIn, double factor)
    implements Calculated {
  public HeightFactor {
    Require.positive("exposure coefficient K_z", factor, "");
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("height-factor", Measure.ratio(factor))
            .with("height", Measure.feet(countedIn))
            .with("lowest", Measure.feet(ground.lowestHeightIn()))
            .with("gradient", Measure.feet(ground.gradientHeightIn()))
            .with("alpha", Measure.ratio(ground.alphaFactor())));
  }
}

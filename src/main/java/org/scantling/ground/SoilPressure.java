package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * The sideways pressure that a soil is allowed at a share of an embedment; {@link
 * LateralResistance#at} finds it.
 *
 * @param soil how it pushes back
 * @param countedFt what of the embedment counts, ft
 * @param shareRatio 1/3 for S1, 1 for S3
 * @param pressurePsf psf
 */
public record SoilPressure(
    LateralResistance soil, double countedFt, double shareRatio, double pressurePsf)
    implements Calculated {
  /** As S1, at a third of the depth. */
  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("soil", Measure.psf(pressurePsf))
            .with("lateral", new Measure(soil.lateralPsfPerFt(), Unit.PSF_PER_FOOT))
            .with("increase", Measure.count(soil.increaseFactor()))
            .with("counted", new Measure(countedFt, Unit.FOOT)));
  }
}

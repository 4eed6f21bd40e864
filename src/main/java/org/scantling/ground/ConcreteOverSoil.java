package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What concrete that fills a hole presses with over the soil it replaces, which the ground below
 * has always carried.
 *
 * @param weights of both
 * @param depthIn of the hole, in
 * @param pressurePsf psf, zero where the soil is the heavier
 */
public record ConcreteOverSoil(BallastWeights weights, double depthIn, double pressurePsf)
    implements Calculated {
  /**
   * Finds that pressure.
   *
   * @param weights of concrete and soil
   * @param depthIn of the hole, in
   * @return (W_c − W_s) d, psf, zero or more
   *     <p>Source: statics; that the soil it replaces is taken off is common practice
   *     <p>Worked number: 30 in of 150 pcf in soil of 100 pcf press 125 psf more.
   */
  public static ConcreteOverSoil of(BallastWeights weights, double depthIn) {
    double morePcf = Math.max(0, weights.concretePcf() - weights.soilPcf());
    return new ConcreteOverSoil(weights, depthIn, morePcf * depthIn / Inches.PER_FOOT);
  }

  @Override
  public List<FormulaLine> lines() {
    return pressurePsf > 0
        ? List.of(
            FormulaLine.of("own-pressure", Measure.psf(pressurePsf))
                .with("concrete-weight", new Measure(weights.concretePcf(), Unit.PCF))
                .with("soil-weight", new Measure(weights.soilPcf(), Unit.PCF))
                .with("depth", Measure.feet(depthIn)))
        : List.of();
  }
}

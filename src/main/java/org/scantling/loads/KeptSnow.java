package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Snow that an open top keeps.
 *
 * @param shareRatio share of the snow of a closed roof that it keeps, 0 to 1
 * @param flatPsf snow on a closed flat roof, psf
 * @param keptPsf what stays on the open top, psf of plan
 */
public record KeptSnow(double shareRatio, double flatPsf, double keptPsf) implements Calculated {
  public KeptSnow {
    Require.zeroOrMore("share of the snow", shareRatio, "");
    Require.zeroOrMore("snow on a flat roof", flatPsf, "psf");
  }

  /**
   * Finds the snow on an open top.
   *
   * @param shareRatio share that it keeps, 0 to 1
   * @param flatPsf p_f, psf, zero or more
   * @return p_s = c p_f
   *     <p>Source: common practice; the standard gives no reduction for openings
   *     <p>Worked number: 0.5 of 15.12 psf are 7.56 psf.
   */
  public static KeptSnow of(double shareRatio, double flatPsf) {
    return new KeptSnow(shareRatio, flatPsf, flatPsf * shareRatio);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("snow", Measure.psf(keptPsf))
            .with("share", Measure.ratio(shareRatio))
            .with("flat", Measure.psf(flatPsf)));
  }
}

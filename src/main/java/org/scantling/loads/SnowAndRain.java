package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Snow as Canadian tables print it, in two parts, and the ground snow under which a roof carries as
 * much by the other code.
 *
 * @param snowPsf S_s, psf, zero or more
 * @param rainPsf what of S_r, the rain in it, counts, psf
 * @param shareRatio share of S_s that lies on a roof; S_r counts for no more than that
 * @param thermalFactor C_t
 * @param roofPsf S, psf
 * @param groundPsf p_g, psf
 *     <p>Source: National Building Code of Canada, 2020, 4.1.6.2; ASCE 7, 2016, section 7.3
 */
public record SnowAndRain(
    double snowPsf,
    double rainPsf,
    double shareRatio,
    double thermalFactor,
    double roofPsf,
    double groundPsf)
    implements Calculated {
  public SnowAndRain {
    Require.zeroOrMore("snow", snowPsf, "psf");
    Require.zeroOrMore("rain in the snow", rainPsf, "psf");
    Require.share("share of the snow on a roof", shareRatio);
  }

  /**
   * Finds the snow on a roof and the ground snow behind it.
   *
   * @param snowPsf S_s, psf, zero or more
   * @param rainPsf S_r, psf, zero or more
   * @param shareRatio share of S_s on a roof, 0.8 in the code
   * @param thermalFactor C_t of a structure open to the air
   * @return S = share × S_s + S_r, and p_g = S / (0.7 C_t)
   *     <p>Source: National Building Code of Canada, 2020, 4.1.6.2; ASCE 7, 2016, section 7.3
   *     <p>Worked number: 39.68 psf with 8.354 psf of rain are 40.1 psf on the roof, 47.74 psf on
   *     the ground.
   */
  public static SnowAndRain of(
      double snowPsf, double rainPsf, double shareRatio, double thermalFactor) {
    double countedPsf = Math.min(rainPsf, shareRatio * snowPsf);
    double roofPsf = shareRatio * snowPsf + countedPsf;
    double groundPsf = FlatRoofSnow.groundPsf(roofPsf, new SnowFactors(1, thermalFactor, 1));
    return new SnowAndRain(snowPsf, countedPsf, shareRatio, thermalFactor, roofPsf, groundPsf);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("canada-roof", Measure.psfFromKpa(roofPsf))
            .with("ss", Measure.psfFromKpa(snowPsf))
            .with("sr", Measure.psfFromKpa(rainPsf))
            .with("share", Measure.ratio(shareRatio)),
        FormulaLine.of("from-snow-and-rain", Measure.psf(groundPsf))
            .with("roof", Measure.psfFromKpa(roofPsf))
            .with("thermalFactor", Measure.ratio(thermalFactor))
            .with("ss", Measure.psfFromKpa(snowPsf)));
  }
}

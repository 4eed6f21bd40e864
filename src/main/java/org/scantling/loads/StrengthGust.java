package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/** The gust of three seconds at strength level behind a wind that was given as something else. */
public sealed interface StrengthGust extends Calculated {
  /** V, mph. */
  double speedMph();

  /** The only line of it. */
  FormulaLine line();

  @Override
  default List<FormulaLine> lines() {
    return List.of(line());
  }

  /**
   * By the curve of gusts, from once in fifty years to strength level.
   *
   * @param meanMph mean speed, mph
   * @param gustFactor gust over mean
   * @param levelFactor of the pressure, from once in fifty years to strength level
   * @param speedMph V, mph
   */
  record OfMean(double meanMph, double gustFactor, double levelFactor, double speedMph)
      implements StrengthGust {
    public OfMean {
      Require.zeroOrMore("mean wind speed", meanMph, "mph");
    }

    @Override
    public FormulaLine line() {
      return FormulaLine.of("from-mean", Measure.mph(speedMph))
          .with("given", Measure.mph(meanMph))
          .with("gust", Measure.ratio(gustFactor))
          .with("level", Measure.ratio(levelFactor));
    }
  }

  /**
   * From the allowable-stress level of an older map.
   *
   * @param allowableMph gust, mph
   * @param levelFactor what of a strength-level wind is allowable-stress level
   * @param speedMph V, mph
   */
  record OfAllowable(double allowableMph, double levelFactor, double speedMph)
      implements StrengthGust {
    public OfAllowable {
      Require.zeroOrMore("allowable-stress wind speed", allowableMph, "mph");
      Require.positive("factor of the wind", levelFactor, "");
    }

    @Override
    public FormulaLine line() {
      return FormulaLine.of("from-allowable", Measure.mph(speedMph))
          .with("given", Measure.mph(allowableMph))
          .with("level", Measure.ratio(levelFactor));
    }
  }

  /**
   * By equal pressure on a low open frame; {@link HourlyWind#equalGust} finds it.
   *
   * @param hourly the wind as it was given
   * @param frames the factors of both codes
   * @param speedMph V, mph
   */
  record OfPressure(HourlyWind hourly, HourlyWind.Frames frames, double speedMph)
      implements StrengthGust {
    @Override
    public FormulaLine line() {
      return FormulaLine.of("equal-pressure", Measure.mph(speedMph))
          .with("hourly", Measure.psfFromKpa(hourly.pressurePsf()))
          .with("factor", Measure.ratio(frames.loadFactor()))
          .with("exposure", Measure.ratio(frames.exposureFactor()))
          .with("canadian", Measure.ratio(frames.canadianGustFactor()))
          .with("heightFactor", Measure.ratio(frames.height().factor()))
          .with("directionalityFactor", Measure.ratio(frames.directionalityFactor()))
          .with("gust", Measure.ratio(frames.gustFactor()));
    }
  }

  /**
   * Finds the gust of a mean speed.
   *
   * @param meanMph mean of ten minutes or of an hour, once in fifty years, mph, zero or more
   * @param gustFactor three-second gust over that mean
   * @param levelFactor of the pressure, to strength level
   * @return V = v g √f
   *     <p>Source: ASCE 7, 2016, section C26.5, Durst curve (from memory)
   *     <p>Worked number: 52.8 mph in an hour with 1.52 and 1.6 are 101.5 mph.
   */
  static OfMean ofMean(double meanMph, double gustFactor, double levelFactor) {
    return new OfMean(
        meanMph, gustFactor, levelFactor, meanMph * gustFactor * Math.sqrt(levelFactor));
  }

  /**
   * Finds the gust of an older map.
   *
   * @param allowableMph three-second gust at allowable-stress level, mph, zero or more
   * @param levelFactor what of a strength-level wind is allowable-stress level, above zero
   * @return V = V_asd / √f
   *     <p>Source: ASCE 7, 2016, section 2.4.1
   *     <p>Worked number: 90 mph with 0.6 are 116.2 mph.
   */
  static OfAllowable ofAllowable(double allowableMph, double levelFactor) {
    return new OfAllowable(allowableMph, levelFactor, allowableMph / Math.sqrt(levelFactor));
  }
}

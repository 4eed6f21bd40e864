package org.scantling.engine;

import static org.scantling.reasons.Question.WIND_SPEED;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Site;
import org.scantling.loads.HourlyWind;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WindRow;

/** The gust at strength level behind a wind that a site file gives as something else. */
final class GivenWindWorks {
  private static final String OPEN_COUNTRY = "C";
  private static final String MEAN = "wind.mean.";
  private static final String HOURLY = "mean-hourly";

  private final Tables tables;
  private final Site.Climate climate;

  GivenWindWorks(Tables tables, Site.Climate climate) {
    this.tables = tables;
    this.climate = climate;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    Site.Weather weather = climate.weather();
    weather.hourlyPressurePsf().ifPresent(psf -> hourly(facts, HourlyWind.ofPressure(psf)));
    climate
        .windSpeedMph()
        .ifPresent(
            mph -> {
              switch (weather.windBasis().orElse(Site.Weather.STRENGTH_GUST)) {
                case "allowable-gust" -> facts.add(allowable(mph));
                case "mean-10-minute" -> facts.add(mean("mean-10-minute", mph, Evidence.none()));
                case HOURLY -> hourly(facts, HourlyWind.ofSpeed(mph));
                default -> {}
              }
            });
    return facts;
  }

  private Worked allowable(double mph) {
    WindRow level = tables.wind("wind.older-code.factor");
    return worked(
        "wind.from-allowable",
        mph / Math.sqrt(level.amount()),
        Evidence.saw("given", mph(mph)).and("level", Measure.ratio(level.amount())),
        level.source());
  }

  /** By the curve of gusts, and by the pressures of both codes; the greater counts. */
  private void hourly(List<Fact> facts, HourlyWind wind) {
    Evidence pressure = Evidence.saw("hourly", Measure.psf(wind.pressurePsf()));
    facts.add(mean(HOURLY, wind.speedMph(), pressure));
    facts.add(equal(wind));
  }

  private Worked mean(String basis, double mph, Evidence before) {
    WindRow gust = tables.wind(MEAN + basis);
    WindRow level = tables.wind(MEAN + "level");
    return worked(
        "wind.from-mean",
        mph * gust.amount() * Math.sqrt(level.amount()),
        before
            .and("given", mph(mph))
            .and("gust", Measure.ratio(gust.amount()))
            .and("level", Measure.ratio(level.amount())),
        gust.source());
  }

  private Worked equal(HourlyWind wind) {
    ExposureRow open = tables.exposure(OPEN_COUNTRY);
    double kz = LoadWorks.growing(open).kzFactor(open.leastHeightFt() * Inches.PER_FOOT);
    WindRow factor = tables.wind("wind.canada.load-factor");
    HourlyWind.Frames frames =
        new HourlyWind.Frames(
            factor.amount(),
            tables.wind("wind.canada.exposure").amount(),
            tables.wind("wind.canada.gust").amount(),
            kz,
            tables.wind("wind.directionality").amount(),
            tables.wind("wind.gust").amount());
    return worked(
        "wind.equal-pressure",
        wind.equalGustMph(frames),
        Evidence.saw("hourly", Measure.psf(wind.pressurePsf()))
            .and("factor", Measure.ratio(frames.loadFactor()))
            .and("exposure", Measure.ratio(frames.exposureFactor()))
            .and("canadian", Measure.ratio(frames.canadianGustFactor()))
            .and("heightFactor", Measure.ratio(kz))
            .and("directionalityFactor", Measure.ratio(frames.directionalityFactor()))
            .and("gust", Measure.ratio(frames.gustFactor())),
        factor.source());
  }

  private static Worked worked(String id, double mph, Evidence evidence, Source source) {
    return new Worked(id, WIND_SPEED, mph, evidence, source);
  }

  private static Measure mph(double speed) {
    return new Measure(speed, Unit.MPH);
  }
}

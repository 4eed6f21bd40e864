package org.scantling.engine;

import static org.scantling.reasons.Question.WIND_PRESSURE;
import static org.scantling.reasons.Question.WIND_SPEED;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Site;
import org.scantling.loads.HourlyWind;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WindRow;

/** The gust at strength level behind a wind that a site file gives as something else. */
final class ConvertedWind {
  private static final String OPEN_COUNTRY = "C";
  private static final String MEAN = "wind.mean.";
  private static final String HOURLY = "mean-hourly";

  private final Tables tables;
  private final Site.Climate climate;

  ConvertedWind(Tables tables, Site.Climate climate) {
    this.tables = tables;
    this.climate = climate;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>(gusts());
    climate.weather().hourlyPressurePsf().ifPresent(psf -> facts.add(most(psf)));
    return facts;
  }

  /** The same step by step, for going over by hand. */
  List<CalculationStep> trace(CalculationSteps steps) {
    List<CalculationStep> list = new ArrayList<>();
    climate
        .weather()
        .hourlyPressurePsf()
        .ifPresent(psf -> list.add(mean(steps, HourlyWind.ofPressure(psf))));
    hourlySpeed().ifPresent(wind -> list.add(pressure(steps, wind)));
    for (Worked each : gusts()) {
      list.add(steps.of(each.id(), mph(each.number()), each.evidence()));
    }
    return list;
  }

  private static CalculationStep mean(CalculationSteps steps, HourlyWind wind) {
    Evidence pressure = Evidence.saw("hourly", Measure.psfFromKpa(wind.pressurePsf()));
    return steps.of("wind.hourly-speed", mph(wind.speedMph()), pressure);
  }

  private static CalculationStep pressure(CalculationSteps steps, HourlyWind wind) {
    Measure hourly = Measure.psfFromKpa(wind.pressurePsf());
    return steps.of("wind.hourly-pressure", hourly, Evidence.saw("given", mph(wind.speedMph())));
  }

  private Optional<HourlyWind> hourlySpeed() {
    boolean hourly = climate.weather().windBasis().filter(HOURLY::equals).isPresent();
    return hourly && climate.windSpeedMph().isPresent()
        ? Optional.of(HourlyWind.ofSpeed(climate.windSpeedMph().getAsDouble()))
        : Optional.empty();
  }

  private List<Worked> gusts() {
    List<Worked> all = new ArrayList<>();
    Site.Weather weather = climate.weather();
    weather.hourlyPressurePsf().ifPresent(psf -> hourly(all, HourlyWind.ofPressure(psf)));
    hourlySpeed().ifPresent(wind -> hourly(all, wind));
    climate
        .windSpeedMph()
        .ifPresent(
            mph -> {
              switch (weather.windBasis().orElse(Site.Weather.STRENGTH_GUST)) {
                case "allowable-gust" -> all.add(allowable(mph));
                case "mean-10-minute" -> all.add(mean("mean-10-minute", mph, Evidence.none()));
                default -> {}
              }
            });
    return all;
  }

  /** The hourly pressure that comes right to the limit of the rules: a speed is as its root. */
  private Worked most(double hourlyPsf) {
    NumberRow limit = tables.thumb("limit.wind-speed");
    double greatestMph = gusts().stream().mapToDouble(Worked::number).max().orElseThrow();
    double share = limit.amount() / greatestMph;
    return new Worked(
        "wind.most-hourly",
        WIND_PRESSURE,
        GivenLoads.down(hourlyPsf * share * share),
        Evidence.none(),
        limit.source());
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
  private void hourly(List<Worked> all, HourlyWind wind) {
    Evidence pressure = Evidence.saw("hourly", Measure.psfFromKpa(wind.pressurePsf()));
    all.add(mean(HOURLY, wind.speedMph(), pressure));
    all.add(equal(wind));
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
    double kz = DerivedLoads.growing(open).kzFactor(open.leastHeightFt() * Inches.PER_FOOT);
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
        Evidence.saw("hourly", Measure.psfFromKpa(wind.pressurePsf()))
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

package org.scantling.facts;

import static org.scantling.reasons.Question.WIND_PRESSURE;
import static org.scantling.reasons.Question.WIND_SPEED;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Site;
import org.scantling.loads.HourlyWind;
import org.scantling.loads.StrengthGust;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WindRow;

/** The gust at strength level behind a wind that a site file gives as something else. */
public final class ConvertedWind {
  private static final String OPEN_COUNTRY = "C";
  private static final String ROUGH_GROUND = "B";
  private static final String MEAN = "wind.mean.";
  private static final String HOURLY = "mean-hourly";

  private final Tables tables;
  private final Site.Climate climate;

  /**
   * A gust with where its factors come from.
   *
   * @param hourly what it was worked from, where that was the mean of an hour
   */
  private record Gust(StrengthGust wind, Optional<HourlyWind> hourly, Source source) {
    Worked worked() {
      FormulaLine line = wind.line();
      Evidence evidence = Evidence.of(line);
      boolean told = evidence.find("hourly").isPresent();
      Evidence before =
          hourly
              .filter(each -> !told)
              .map(each -> Evidence.saw("hourly", Measure.psfFromKpa(each.pressurePsf())))
              .orElse(Evidence.none());
      return new Worked(
          "wind.".concat(line.id()), WIND_SPEED, wind.speedMph(), before.and(evidence), source);
    }
  }

  public ConvertedWind(Tables tables, Site.Climate climate) {
    this.tables = tables;
    this.climate = climate;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    gusts().forEach(each -> facts.add(each.worked()));
    climate.weather().hourlyPressurePsf().ifPresent(psf -> facts.add(most(psf)));
    return facts;
  }

  /** The same line by line, for going over by hand. */
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    hourlyWinds().forEach(each -> lines.addAll(each.lines()));
    gusts().forEach(each -> lines.addAll(each.wind().lines()));
    return lines;
  }

  /** By its pressure, by its speed, or by both. */
  private List<HourlyWind> hourlyWinds() {
    List<HourlyWind> winds = new ArrayList<>();
    Site.Weather weather = climate.weather();
    weather.hourlyPressurePsf().ifPresent(psf -> winds.add(HourlyWind.ofPressure(psf)));
    if (weather.windBasis().filter(HOURLY::equals).isPresent()) {
      climate.windSpeedMph().ifPresent(mph -> winds.add(HourlyWind.ofSpeed(mph)));
    }
    return winds;
  }

  private List<Gust> gusts() {
    List<Gust> all = new ArrayList<>();
    for (HourlyWind wind : hourlyWinds()) {
      all.add(mean(HOURLY, wind.speedMph(), Optional.of(wind)));
      all.add(equal(wind));
    }
    String basis = climate.weather().windBasis().orElse(Site.Weather.STRENGTH_GUST);
    climate
        .windSpeedMph()
        .ifPresent(
            mph -> {
              switch (basis) {
                case "allowable-gust" -> all.add(allowable(mph));
                case "mean-10-minute" -> all.add(mean(basis, mph, Optional.empty()));
                default -> {}
              }
            });
    return all;
  }

  /** The hourly pressure that comes right to the limit of the rules: a speed is as its root. */
  private Worked most(double hourlyPsf) {
    NumberRow limit = tables.thumb("limit.wind-speed");
    double greatestMph =
        gusts().stream().mapToDouble(each -> each.wind().speedMph()).max().orElseThrow();
    double share = limit.amount() / greatestMph;
    return new Worked(
        "wind.most-hourly",
        WIND_PRESSURE,
        GivenLoads.down(hourlyPsf * share * share),
        Evidence.none(),
        limit.source());
  }

  private Gust allowable(double mph) {
    WindRow level = tables.wind("wind.older-code.factor");
    return new Gust(
        StrengthGust.ofAllowable(mph, level.amount()), Optional.empty(), level.source());
  }

  private Gust mean(String basis, double mph, Optional<HourlyWind> hourly) {
    WindRow gust = tables.wind(MEAN + basis);
    WindRow level = tables.wind(MEAN + "level");
    return new Gust(StrengthGust.ofMean(mph, gust.amount(), level.amount()), hourly, gust.source());
  }

  /**
   * By the pressures of both codes; the greater of this and the curve of gusts counts. Among houses
   * or trees the Canadian factor falls less than ours, so that the gust is greater there. On an
   * open shore ours is the greater, and what holds in open country counts.
   */
  private Gust equal(HourlyWind wind) {
    boolean rough = climate.exposure().filter(ROUGH_GROUND::equals).isPresent();
    ExposureRow ground = tables.exposure(rough ? ROUGH_GROUND : OPEN_COUNTRY);
    WindRow factor = tables.wind("wind.canada.load-factor");
    HourlyWind.Frames frames =
        new HourlyWind.Frames(
            factor.amount(),
            tables.wind(rough ? "wind.canada.exposure-rough" : "wind.canada.exposure").amount(),
            tables.wind("wind.canada.gust").amount(),
            DerivedLoads.growing(ground).at(ground.leastHeightFt() * Inches.PER_FOOT),
            tables.wind("wind.directionality").amount(),
            tables.wind("wind.gust").amount());
    return new Gust(wind.equalGust(frames), Optional.of(wind), factor.source());
  }
}

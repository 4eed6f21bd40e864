package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.loads.ExposureConstants;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.HillWind;
import org.scantling.loads.OpenTop;
import org.scantling.loads.SnowFactors;
import org.scantling.loads.VelocityPressure;
import org.scantling.loads.WindFactors;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.ExposureRow;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Tables;
import org.scantling.tables.VineRow;

/** Snow on an open-air top, how much of the sky the top covers, and the pressure of the wind. */
final class DerivedLoads {
  private static final double INCHES_PER_FOOT = 12;

  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;

  DerivedLoads(DesignProblem problem, Answers answers, Geometry geometry) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = geometry;
  }

  List<Fact> facts() {
    VineRow vine = problem.tables().vine(answers.option(VINE));
    OpenTop top =
        OpenTop.tried(
            geometry.crossbeams().breadthPerSpacingIn(),
            geometry.crossbeamSpacingIn(),
            vine.canopyFillBareRatio());
    List<Fact> facts = new ArrayList<>();
    facts.add(vine);
    facts.addAll(problem.tables().live().rows());
    facts.addAll(problem.tables().snow().rows());
    FlatRoofSnow snow = snow();
    facts.add(flatSnow(snow));
    facts.add(lowSlopeSnow(snow));
    facts.add(covered(top, vine));
    facts.add(
        new Worked(
            "top.gap",
            SNOW_SHARE,
            geometry.narrowestGapIn(),
            Evidence.none(),
            problem.tables().thumb("snow.full-share-gap").source()));
    facts.add(wind());
    return facts;
  }

  private FlatRoofSnow snow() {
    Tables tables = problem.tables();
    SnowFactors factors =
        new SnowFactors(
            exposure().snowExposureFactor(),
            tables.snow("snow.thermal.open-air").amount(),
            importance().amount());
    return FlatRoofSnow.of(
        answers.number(GROUND_SNOW), factors, tables.snow("snow.low-slope-limit").amount());
  }

  private NumberRow importance() {
    return problem.tables().snow("snow.importance." + problem.site().preferences().riskCategory());
  }

  /** Snow on a flat roof here. */
  Worked flatSnow() {
    return flatSnow(snow());
  }

  private Worked flatSnow(FlatRoofSnow snow) {
    return new Worked(
        "snow.flat",
        FLAT_SNOW,
        snow.flatRoofSnowPsf(),
        Evidence.saw("ground", Measure.psf(snow.groundSnowPsf()))
            .and("exposureFactor", Measure.ratio(snow.factors().exposureFactor()))
            .and("thermalFactor", Measure.ratio(snow.factors().thermalFactor()))
            .and("importanceFactor", Measure.ratio(snow.factors().importanceFactor())),
        source("snow.flat"));
  }

  private Worked lowSlopeSnow(FlatRoofSnow snow) {
    NumberRow limit = problem.tables().snow("snow.low-slope-limit");
    return new Worked(
        "snow.low-slope",
        FLAT_SNOW,
        snow.lowSlopeMinimumPsf(),
        Evidence.saw("ground", Measure.psf(snow.groundSnowPsf()))
            .and("limit", Measure.psf(limit.amount()))
            .and("importanceFactor", Measure.ratio(snow.factors().importanceFactor())),
        limit.source());
  }

  private Worked covered(OpenTop top, VineRow vine) {
    return new Worked(
        "top.covered",
        SNOW_SHARE,
        top.coveredRatio(),
        Evidence.saw("solid", Measure.ratio(top.solidRatio()))
            .and("stems", Measure.ratio(vine.canopyFillBareRatio())),
        problem.tables().snow("snow.share-least").source());
  }

  /** The pressure of the wind at the height of the top, with every factor of it. */
  Worked wind() {
    Tables tables = problem.tables();
    ExposureRow exposure = exposure();
    double heightIn = geometry.overallHeightIn();
    double kz = growing(exposure).kzFactor(heightIn);
    VelocityPressure pressure =
        VelocityPressure.of(
            answers.number(WIND_SPEED),
            kz,
            new WindFactors(
                topographicFactor(),
                tables.wind("wind.directionality").amount(),
                tables.wind("wind.ground-elevation").amount()));
    return new Worked(
        "wind.velocity-pressure",
        WIND_PRESSURE,
        pressure.pressurePsf(),
        Evidence.saw("speed", new Measure(pressure.windSpeedMph(), Unit.MPH))
            .and("exposure", exposure.id())
            .and("heightFactor", Measure.ratio(kz))
            .and("topographicFactor", Measure.ratio(pressure.factors().topographicFactor()))
            .and("directionalityFactor", Measure.ratio(pressure.factors().directionalityFactor()))
            .and("elevationFactor", Measure.ratio(pressure.factors().elevationFactor())),
        source("wind.velocity-pressure"));
  }

  /** Of the hill that the site file describes; else that of level ground. */
  private double topographicFactor() {
    return hill()
        .map(hill -> hill.wind().topographicFactor())
        .orElse(problem.tables().wind("wind.topographic").amount());
  }

  /** How much harder the wind presses on that hill, step by step. */
  Optional<Worked> hillWind() {
    return hill()
        .map(
            derived -> {
              HillWind wind = derived.wind();
              Site.Hill hill = problem.site().climate().weather().hill().orElseThrow();
              return new Worked(
                  "wind.hill",
                  WIND_PRESSURE,
                  wind.topographicFactor(),
                  Evidence.saw("shape", hill.shape())
                      .and("height", new Measure(hill.heightIn() / INCHES_PER_FOOT, Unit.FOOT))
                      .and(
                          "half-length",
                          new Measure(hill.halfLengthIn() / INCHES_PER_FOOT, Unit.FOOT))
                      .and("steep", Measure.ratio(wind.k1Factor()))
                      .and("near", Measure.ratio(wind.k2Factor()))
                      .and("low", Measure.ratio(wind.k3Factor())),
                  source("wind.hill"));
            });
  }

  private Optional<DerivedHillWind> hill() {
    return problem
        .site()
        .climate()
        .weather()
        .hill()
        .map(
            hill ->
                new DerivedHillWind(problem.tables(), hill, answers.option(EXPOSURE), geometry));
  }

  /** How the wind grows with height there, for whoever works with it and whoever tells it. */
  static ExposureConstants growing(ExposureRow exposure) {
    return new ExposureConstants(
        exposure.alphaFactor(),
        exposure.gradientHeightFt() * INCHES_PER_FOOT,
        exposure.leastHeightFt() * INCHES_PER_FOOT);
  }

  private Source source(String working) {
    return problem.tables().workings().row(working).source();
  }

  private ExposureRow exposure() {
    return problem.tables().exposure(answers.option(EXPOSURE));
  }
}

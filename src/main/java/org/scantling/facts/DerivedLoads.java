package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.Geometry;
import org.scantling.loads.ExposureConstants;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.HillWind;
import org.scantling.loads.OpenTop;
import org.scantling.loads.SnowFactors;
import org.scantling.loads.VelocityPressure;
import org.scantling.loads.WindFactors;
import org.scantling.problem.DesignProblem;
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
import org.scantling.tables.VineRow;

/** Snow on an open-air top, how much of the sky the top covers, and the pressure of the wind. */
public final class DerivedLoads {
  private final DesignProblem problem;
  private final Answers answers;
  private final Geometry geometry;

  public DerivedLoads(DesignProblem problem, Answers answers, Geometry geometry) {
    this.problem = problem;
    this.answers = answers;
    this.geometry = geometry;
  }

  List<Fact> facts() {
    VineRow vine = problem.tables().vine(answers.option(VINE));
    OpenTop top =
        OpenTop.tried(
            geometry.breadthPerSpacingIn(),
            geometry.crossbeamSpacingIn(),
            vine.canopyFillBareRatio());
    List<Fact> facts = new ArrayList<>();
    facts.add(vine);
    facts.addAll(problem.tables().live().rows());
    facts.addAll(problem.tables().snow().rows());
    FlatRoofSnow snow = snow();
    facts.add(
        new Worked(
            "snow.flat",
            FLAT_SNOW,
            snow.flatRoofSnowPsf(),
            Evidence.of(snow.line()),
            source("snow.flat")));
    facts.add(lowSlopeSnow(snow));
    facts.add(covered(top, vine));
    facts.add(
        new Worked(
            "top.gap",
            SNOW_SHARE,
            geometry.narrowestGapIn(),
            Evidence.none(),
            problem.tables().thumb("snow.full-share-gap").source()));
    facts.add(wind(pressure()));
    return facts;
  }

  /** Snow on a flat roof here. */
  public FlatRoofSnow snow() {
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

  private Worked wind(VelocityPressure pressure) {
    return new Worked(
        "wind.velocity-pressure",
        WIND_PRESSURE,
        pressure.pressurePsf(),
        Evidence.of(pressure.line()).and("exposure", exposure().id()),
        source("wind.velocity-pressure"));
  }

  /** The pressure of the wind at the height of the top, with every factor of it. */
  public VelocityPressure pressure() {
    Tables tables = problem.tables();
    return VelocityPressure.of(
        answers.number(WIND_SPEED),
        growing(exposure()).at(geometry.overallHeightIn()),
        new WindFactors(
            hill().orElseGet(() -> HillWind.flat(tables.wind("wind.topographic").amount())),
            tables.wind("wind.directionality").amount(),
            tables.wind("wind.ground-elevation").amount()));
  }

  /** How much harder the wind presses on the hill that the site file describes. */
  Optional<Worked> hillWind() {
    return hill()
        .map(
            wind ->
                new Worked(
                    "wind.hill",
                    WIND_PRESSURE,
                    wind.topographicFactor(),
                    Evidence.of(last(wind.lines())).and(shape()),
                    source("wind.hill")));
  }

  private static FormulaLine last(List<FormulaLine> lines) {
    return lines.get(lines.size() - 1);
  }

  /** The shape of the hill, where there is one. */
  public Evidence shape() {
    return problem
        .site()
        .climate()
        .weather()
        .hill()
        .map(hill -> Evidence.saw("shape", hill.shape()))
        .orElse(Evidence.none());
  }

  private Optional<HillWind> hill() {
    return problem
        .site()
        .climate()
        .weather()
        .hill()
        .map(
            hill ->
                new DerivedHillWind(problem.tables(), hill, answers.option(EXPOSURE), geometry)
                    .wind());
  }

  /** How the wind grows with height there, for whoever works with it and whoever tells it. */
  static ExposureConstants growing(ExposureRow exposure) {
    return new ExposureConstants(
        exposure.alphaFactor(),
        exposure.gradientHeightFt() * Inches.PER_FOOT,
        exposure.leastHeightFt() * Inches.PER_FOOT);
  }

  private Source source(String working) {
    return problem.tables().workings().row(working).source();
  }

  private ExposureRow exposure() {
    return problem.tables().exposure(answers.option(EXPOSURE));
  }
}

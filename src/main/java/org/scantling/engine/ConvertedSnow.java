package org.scantling.engine;

import static org.scantling.reasons.Question.GROUND_SNOW;

import java.util.List;
import org.scantling.design.Site;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.SnowFactors;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.Tables;

/** The ground snow at which our roof carries what theirs does, from snow and rain in two parts. */
final class ConvertedSnow {
  private final Tables tables;
  private final Site.SnowAndRain snow;
  private final double shareRatio;
  private final double thermalFactor;

  ConvertedSnow(Tables tables, Site.SnowAndRain snow) {
    this.tables = tables;
    this.snow = snow;
    this.shareRatio = tables.snow("snow.canada.roof-share").amount();
    this.thermalFactor = tables.snow("snow.thermal.open-air").amount();
  }

  List<Fact> facts() {
    Evidence evidence =
        parts()
            .and("roof", Measure.psfFromKpa(roofPsf()))
            .and("thermalFactor", Measure.ratio(thermalFactor));
    return List.of(
        new Worked(
            "snow.from-snow-and-rain",
            GROUND_SNOW,
            Math.max(snow.groundPsf(), groundPsf(roofPsf())),
            evidence,
            source()),
        new Worked("snow.most-ss", GROUND_SNOW, mostPsf(), Evidence.none(), source()));
  }

  /** The same step by step, for going over by hand. */
  List<CalculationStep> trace(CalculationSteps steps) {
    Measure roof = Measure.psfFromKpa(roofPsf());
    return List.of(
        steps.of("snow.canada-roof", roof, parts()),
        steps.of(
            "snow.from-snow-and-rain",
            Measure.psf(groundPsf(roofPsf())),
            Evidence.saw("roof", roof)
                .and("thermalFactor", Measure.ratio(thermalFactor))
                .and("ss", Measure.psfFromKpa(snow.groundPsf()))));
  }

  private Evidence parts() {
    return Evidence.saw("ss", Measure.psfFromKpa(snow.groundPsf()))
        .and("sr", Measure.psfFromKpa(rainPsf()))
        .and("share", Measure.ratio(shareRatio));
  }

  /** The snow, with as much rain in it as here, that comes right to the limit of the rules. */
  private double mostPsf() {
    double limitPsf = tables.thumb("limit.ground-snow").amount();
    double roofPsf = limitPsf / groundPsf(1);
    double besideRainPsf = (roofPsf - snow.rainPsf()) / shareRatio;
    double underRainPsf = roofPsf / (shareRatio + shareRatio);
    return GivenLoads.down(Math.min(limitPsf, Math.max(besideRainPsf, underRainPsf)));
  }

  private double rainPsf() {
    return Math.min(snow.rainPsf(), shareRatio * snow.groundPsf());
  }

  private double roofPsf() {
    return shareRatio * snow.groundPsf() + rainPsf();
  }

  private double groundPsf(double roofPsf) {
    return FlatRoofSnow.groundPsf(roofPsf, new SnowFactors(1, thermalFactor, 1));
  }

  private Source source() {
    return tables.snow("snow.canada.roof-share").source();
  }
}

package org.scantling.facts;

import static org.scantling.reasons.Question.GROUND_SNOW;

import java.util.List;
import org.scantling.design.Site;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.SnowAndRain;
import org.scantling.loads.SnowFactors;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.Tables;

/** The ground snow at which our roof carries what theirs does, from snow and rain in two parts. */
public final class ConvertedSnow {
  private final Tables tables;
  private final Site.SnowAndRain snow;
  private final double shareRatio;
  private final double thermalFactor;

  public ConvertedSnow(Tables tables, Site.SnowAndRain snow) {
    this.tables = tables;
    this.snow = snow;
    this.shareRatio = tables.snow("snow.canada.roof-share").amount();
    this.thermalFactor = tables.snow("snow.thermal.open-air").amount();
  }

  List<Fact> facts() {
    SnowAndRain worked = worked();
    Evidence evidence =
        Evidence.saw("ss", Measure.psfFromKpa(worked.snowPsf()))
            .and("sr", Measure.psfFromKpa(worked.rainPsf()))
            .and("share", Measure.ratio(worked.shareRatio()))
            .and("roof", Measure.psfFromKpa(worked.roofPsf()))
            .and("thermalFactor", Measure.ratio(worked.thermalFactor()));
    return List.of(
        new Worked(
            "snow.from-snow-and-rain",
            GROUND_SNOW,
            Math.max(worked.snowPsf(), worked.groundPsf()),
            evidence,
            source()),
        new Worked("snow.most-ss", GROUND_SNOW, mostPsf(), Evidence.none(), source()));
  }

  /** What lies on a roof, and on the ground below as much of it. */
  public SnowAndRain worked() {
    return SnowAndRain.of(snow.groundPsf(), snow.rainPsf(), shareRatio, thermalFactor);
  }

  /** The snow, with as much rain in it as here, that comes right to the limit of the rules. */
  private double mostPsf() {
    double limitPsf = tables.thumb("limit.ground-snow").amount();
    double roofPsf = limitPsf / FlatRoofSnow.groundPsf(1, new SnowFactors(1, thermalFactor, 1));
    double besideRainPsf = (roofPsf - snow.rainPsf()) / shareRatio;
    double underRainPsf = roofPsf / (shareRatio + shareRatio);
    return GivenLoads.down(Math.min(limitPsf, Math.max(besideRainPsf, underRainPsf)));
  }

  private Source source() {
    return tables.snow("snow.canada.roof-share").source();
  }
}

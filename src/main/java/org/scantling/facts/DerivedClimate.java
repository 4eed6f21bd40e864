package org.scantling.facts;

import static org.scantling.reasons.Question.FROST_DEPTH;
import static org.scantling.reasons.Question.WIND_SPEED;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Site;
import org.scantling.ground.FrostDepth;
import org.scantling.ground.FrostSoil;
import org.scantling.ground.FrostWinter;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Source;
import org.scantling.reasons.Worked;
import org.scantling.tables.NumberRow;
import org.scantling.tables.SoilRow;
import org.scantling.tables.Tables;

/** The depth of freezing that an air-freezing index gives, where the site states one. */
public final class DerivedClimate {
  /** The worked depth, as rules call it. */
  public static final String FROST = "frost.berggren";

  private static final String SEASON = "frost.season-days-at-";

  private final DesignProblem problem;

  public DerivedClimate(DesignProblem problem) {
    this.problem = problem;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>(problem.tables().authority().rows());
    Site.Climate climate = problem.site().climate();
    frost().map(this::worked).ifPresent(facts::add);
    facts.addAll(new ConvertedWind(problem.tables(), climate).facts());
    climate
        .weather()
        .snow()
        .map(snow -> new ConvertedSnow(problem.tables(), snow).facts())
        .ifPresent(facts::addAll);
    zoneWind().ifPresent(facts::add);
    return facts;
  }

  /** A guess by zone is one of category I; the maps of category II are higher. */
  private Optional<Worked> zoneWind() {
    Site site = problem.site();
    Site.Climate climate = site.climate();
    String factorId = "wind.category-factor." + site.preferences().riskCategory();
    boolean given =
        climate.windSpeedMph().isPresent() || climate.weather().hourlyPressurePsf().isPresent();
    return problem.tables().wind().rows().stream()
        .filter(row -> row.id().equals(factorId) && !given)
        .filter(row -> climate.hardinessZone().isPresent())
        .findFirst()
        .map(
            row -> {
              int zone = (int) climate.hardinessZone().getAsDouble();
              double mph = problem.tables().zones().row(Integer.toString(zone)).windMph();
              return new Worked(
                  "wind.zone-of-category",
                  WIND_SPEED,
                  mph * row.amount(),
                  Evidence.saw("zone", Integer.toString(zone))
                      .and("guess", new Measure(mph, Unit.MPH))
                      .and("factor", Measure.ratio(row.amount())),
                  row.source());
            });
  }

  /** Where the site states an index, and the soil freezes as soils do. */
  public Optional<FrostDepth> frost() {
    OptionalDouble index = problem.site().climate().freezingIndexFDays();
    return index.isPresent() ? frost(index.getAsDouble()) : Optional.empty();
  }

  /** The same for an index that the site does not state. */
  Optional<FrostDepth> frost(double indexFDays) {
    return indexFDays > 0
        ? soil().thermal().map(soil -> frost(soil, indexFDays))
        : Optional.empty();
  }

  private Worked worked(FrostDepth depth) {
    FrostWinter winter = depth.winter();
    Evidence evidence =
        Evidence.saw("index", new Measure(winter.freezingIndexFDays(), Unit.F_DAYS))
            .and("mean", new Measure(winter.meanAnnualF(), Unit.DEGREE));
    Source source = soil().thermal().orElseThrow().source();
    return new Worked(FROST, FROST_DEPTH, depth.depthIn(), evidence, source);
  }

  private FrostDepth frost(SoilRow.Thermal soil, double indexFDays) {
    Tables tables = problem.tables();
    double meanF =
        problem.site().climate().meanAnnualF().orElse(tables.thumb("frost.mean-annual").amount());
    return FrostDepth.of(
        new FrostSoil(
            soil.dryDensityPcf(), soil.moisturePercent() / 100, soil.conductivityBtuPerFtHF()),
        new FrostWinter(
            indexFDays,
            tables.thumb("frost.surface-factor-bare").amount(),
            seasonDays(indexFDays),
            meanF));
  }

  private SoilRow soil() {
    String assumed = problem.tables().defaults().row("soil").word();
    return problem.tables().soil(problem.site().ground().soil().orElse(assumed));
  }

  /** The season of the nearest tabulated index at or above; the longest beyond the table. */
  private double seasonDays(double indexFDays) {
    List<NumberRow> seasons =
        problem.tables().thumbs().rows().stream()
            .filter(row -> row.id().startsWith(SEASON))
            .sorted(Comparator.comparingDouble(DerivedClimate::index))
            .toList();
    return seasons.stream()
        .filter(row -> index(row) >= indexFDays)
        .findFirst()
        .orElse(seasons.get(seasons.size() - 1))
        .amount();
  }

  private static double index(NumberRow season) {
    return Double.parseDouble(season.id().substring(SEASON.length()));
  }
}

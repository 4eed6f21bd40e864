package org.scantling.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Locality;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Worked;
import org.scantling.tables.FreezingIndexRow;
import org.scantling.tables.SnowStation;
import org.scantling.tables.SnowStations;
import org.scantling.tables.Tables;

/** What is measured or tabulated near a site that says where it lies: to compare with, no more. */
final class MeasuredPlace {
  private static final double FEET_A_MILE = 5280;
  private static final String UPPER_BOUND = "at-most";
  private static final Source MEASURED =
      new Source(
          SourceKind.HANDBOOK, "snow data of the package snowload (B. Bean, 2019), MIT", false);

  private final DesignProblem problem;
  private final Tables tables;

  MeasuredPlace(DesignProblem problem) {
    this.problem = problem;
    this.tables = problem.tables();
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    Optional<Locality> place = problem.site().climate().weather().place();
    if (place.isPresent() && place.get() instanceof Locality.Point point) {
      snow(point).ifPresent(facts::add);
    }
    if (place.isPresent() && place.get() instanceof Locality.County county) {
      frost(county).ifPresent(facts::add);
    }
    return facts;
  }

  /** The middle one of what the nearest stations have; nothing where there are too few. */
  private Optional<Fact> snow(Locality.Point point) {
    int most = (int) tables.thumb("stations.nearest").amount();
    double withinFt = tables.thumb("stations.within").amount();
    List<SnowStation> near =
        SnowStations.measured()
            .near(point.latitudeDegrees(), point.longitudeDegrees(), most, withinFt);
    if (near.size() < most) {
      return Optional.empty();
    }
    double middlePsf =
        near.stream()
            .mapToDouble(SnowStation::snowPsf)
            .sorted()
            .skip(most / 2)
            .findFirst()
            .orElse(0);
    SnowStation nearest = near.get(0);
    double farFt = near.get(most - 1).distanceFt(point.latitudeDegrees(), point.longitudeDegrees());
    return Optional.of(
        new Worked(
            "snow.stations",
            Question.GROUND_SNOW,
            middlePsf,
            Evidence.saw("middle", new Measure(Math.rint(middlePsf), Unit.PSF))
                .and("stations", Measure.count(most))
                .and("nearest", nearest.name() + ", " + nearest.state())
                .and("miles", Measure.count((int) Math.ceil(farFt / FEET_A_MILE))),
            MEASURED));
  }

  /** The depth that the freezing index of the county gives in this soil. */
  private Optional<Fact> frost(Locality.County county) {
    Optional<FreezingIndexRow> row = tables.freezingIndex(county.state(), county.county());
    return row.filter(each -> !each.bound().equals(UPPER_BOUND))
        .flatMap(each -> depth(each, county));
  }

  private Optional<Fact> depth(FreezingIndexRow row, Locality.County county) {
    double index = row.freezingIndexFDays();
    return new DerivedClimate(problem)
        .frost(index)
        .map(
            depth ->
                new Worked(
                    "frost.county",
                    Question.FROST_DEPTH,
                    depth.depthIn(),
                    Evidence.saw("depth", Measure.inches(Math.rint(depth.depthIn())))
                        .and("index", new Measure(index, Unit.F_DAYS))
                        .and("county", county.county())
                        .and("state", county.state()),
                    row.source()));
  }
}

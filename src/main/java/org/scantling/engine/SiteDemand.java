package org.scantling.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Site;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;

/**
 * What a site file states of one demand, and the same site with another value there: what {@code
 * --set} does to the file.
 */
final class SiteDemand {
  private final Demand demand;

  SiteDemand(Demand demand) {
    this.demand = demand;
  }

  /** What the file states; empty where a rule decides. */
  Optional<Outcome> stated(Site site) {
    return switch (demand) {
      case WALK_LENGTH -> number(OptionalDouble.of(site.walkway().lengthIn()));
      case CLEAR_WIDTH -> number(site.walkway().clearWidthIn());
      case HEADROOM -> number(site.walkway().headroomIn());
      case FROST_DEPTH -> number(site.climate().frostDepthIn());
      case GROUND_SNOW -> number(site.climate().groundSnowPsf());
      case WIND_SPEED -> number(site.climate().windSpeedMph());
      case SLOPE -> number(OptionalDouble.of(site.ground().slopePercent()));
      case EXPOSURE -> word(site.climate().exposure());
      case SOIL -> word(site.ground().soil());
      case VINE -> word(site.planting().stream().findFirst().map(Site.Planting::vine));
      case SPECIES -> word(site.materials().species());
      case GRADE -> word(site.materials().grade());
      default -> throw unknown();
    };
  }

  /** The same site with another value. */
  Site with(Site site, Outcome value) {
    return switch (demand) {
      case WALK_LENGTH, CLEAR_WIDTH, HEADROOM -> walkway(site, amount(value));
      case FROST_DEPTH, GROUND_SNOW, WIND_SPEED ->
          climate(site, amount(value), site.climate().exposure());
      case EXPOSURE -> climate(site, 0, Optional.of(text(value)));
      case SLOPE -> ground(site, new Site.Ground(site.ground().soil(), amount(value)));
      case SOIL ->
          ground(site, new Site.Ground(Optional.of(text(value)), site.ground().slopePercent()));
      case VINE -> planting(site, text(value));
      case SPECIES, GRADE -> materials(site, Optional.of(text(value)));
      default -> throw unknown();
    };
  }

  private Site walkway(Site site, double in) {
    Site.Walkway now = site.walkway();
    Site.Walkway then =
        new Site.Walkway(
            demand == Demand.WALK_LENGTH ? in : now.lengthIn(),
            demand == Demand.CLEAR_WIDTH ? OptionalDouble.of(in) : now.clearWidthIn(),
            now.users(),
            demand == Demand.HEADROOM ? OptionalDouble.of(in) : now.headroomIn());
    return new Site(
        site.title(),
        site.base(),
        site.climate(),
        site.ground(),
        then,
        site.planting(),
        site.materials(),
        site.preferences());
  }

  private Site climate(Site site, double amount, Optional<String> exposure) {
    Site.Climate now = site.climate();
    OptionalDouble given = OptionalDouble.of(amount);
    Site.Climate then =
        new Site.Climate(
            demand == Demand.FROST_DEPTH ? given : now.frostDepthIn(),
            demand == Demand.GROUND_SNOW ? given : now.groundSnowPsf(),
            demand == Demand.WIND_SPEED ? given : now.windSpeedMph(),
            exposure,
            now.hardinessZone(),
            now.freezingIndexFDays(),
            now.meanAnnualF());
    return new Site(
        site.title(),
        site.base(),
        then,
        site.ground(),
        site.walkway(),
        site.planting(),
        site.materials(),
        site.preferences());
  }

  private static Site ground(Site site, Site.Ground ground) {
    return new Site(
        site.title(),
        site.base(),
        site.climate(),
        ground,
        site.walkway(),
        site.planting(),
        site.materials(),
        site.preferences());
  }

  private static Site planting(Site site, String vine) {
    List<Site.Planting> planting = new ArrayList<>(site.planting());
    if (planting.isEmpty()) {
      planting.add(new Site.Planting(vine));
    } else {
      planting.set(0, new Site.Planting(vine));
    }
    return new Site(
        site.title(),
        site.base(),
        site.climate(),
        site.ground(),
        site.walkway(),
        planting,
        site.materials(),
        site.preferences());
  }

  private Site materials(Site site, Optional<String> word) {
    Site.Materials now = site.materials();
    Site.Materials then =
        new Site.Materials(
            demand == Demand.SPECIES ? word : now.species(),
            demand == Demand.GRADE ? word : now.grade(),
            now.market());
    return new Site(
        site.title(),
        site.base(),
        site.climate(),
        site.ground(),
        site.walkway(),
        site.planting(),
        then,
        site.preferences());
  }

  private Optional<Outcome> number(OptionalDouble number) {
    return number.isPresent()
        ? Optional.of(new Outcome.Amount(new Measure(number.getAsDouble(), demand.unit())))
        : Optional.empty();
  }

  private static Optional<Outcome> word(Optional<String> word) {
    return word.map(Outcome.Word::new);
  }

  private static double amount(Outcome value) {
    return ((Outcome.Amount) value).measure().amount();
  }

  private static String text(Outcome value) {
    return ((Outcome.Word) value).text();
  }

  private IllegalArgumentException unknown() {
    return new IllegalArgumentException(
        demand.path() + " is no demand along which turning points can be searched");
  }
}

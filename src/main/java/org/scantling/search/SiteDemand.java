package org.scantling.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Bays;
import org.scantling.design.Site;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;

/**
 * What a site file states of one demand, and the same site with another value there: what {@code
 * --set} does to the file.
 */
public final class SiteDemand {
  private static final String AUTO = "auto";

  private final Demand demand;

  public SiteDemand(Demand demand) {
    this.demand = demand;
  }

  /** What the file states; empty where a rule decides. */
  public Optional<Outcome> stated(Site site) {
    return switch (demand) {
      case WALK_LENGTH -> number(OptionalDouble.of(site.walkway().lengthIn()));
      case BAYS -> number(site.walkway().bays().stream().asDoubleStream().findFirst());
      case BAY -> Optional.empty();
      case CLEAR_WIDTH -> number(site.walkway().clearWidthIn());
      case HEADROOM -> number(site.walkway().headroomIn());
      case FROST_DEPTH -> number(site.climate().frostDepthIn());
      case GROUND_SNOW -> number(site.climate().groundSnowPsf());
      case WIND_SPEED ->
          site.climate().weather().gusts()
              ? number(site.climate().windSpeedMph())
              : Optional.empty();
      case SLOPE -> number(OptionalDouble.of(site.ground().slopePercent()));
      case CROSS_SLOPE -> number(site.ground().across().steepnessPercent());
      case CROSS_FALL -> number(site.ground().across().stepIn());
      case EXPOSURE -> word(site.climate().exposure());
      case SOIL -> word(site.ground().soil());
      case VINE -> word(site.planting().stream().findFirst().map(Site.Planting::vine));
      case SPECIES -> word(site.materials().species());
      case GRADE -> word(site.materials().grade());
      case MACHINE_WIDTH -> number(machine(site).map(Site.User.Machine::machineWidthIn));
      case HEADER -> wish(site.preferences().header());
      case FOOTING -> wish(site.preferences().footing());
      case KEEP -> wish(site.preferences().keep());
      case BASIS -> wish(site.preferences().basis());
      case LARGEST_POST -> word(site.preferences().largest().post());
      case LARGEST_HEADER -> word(site.preferences().largest().header());
      case LARGEST_CROSSBEAM -> word(site.preferences().largest().crossbeam());
      default -> throw unknown();
    };
  }

  /** What {@code --set} takes to change it in the file of this site. */
  String setting(Site site) {
    return demand == Demand.MACHINE_WIDTH
        ? "walkway.users["
            + machine(site).map(site.walkway().users()::indexOf).orElseThrow()
            + "].machine-width"
        : demand.setting();
  }

  /** The same site with another value. */
  public Site with(Site site, Outcome value) {
    return switch (demand) {
      case WALK_LENGTH, CLEAR_WIDTH, HEADROOM -> walkway(site, amount(value));
      case BAYS -> divided(site, (int) Math.round(amount(value)), site.walkway().lengthIn());
      case BAY -> stretched(site, amount(value));
      case FROST_DEPTH, GROUND_SNOW, WIND_SPEED ->
          climate(site, amount(value), site.climate().exposure());
      case EXPOSURE -> climate(site, 0, Optional.of(text(value)));
      case SLOPE -> site.with(site.ground().falling(amount(value)));
      case CROSS_SLOPE ->
          site.with(site.ground().fallingAcross(site.ground().across().steep(amount(value))));
      case CROSS_FALL ->
          site.with(site.ground().fallingAcross(site.ground().across().stepped(amount(value))));
      case SOIL -> site.with(site.ground().of(text(value)));
      case VINE -> planting(site, text(value));
      case SPECIES, GRADE -> materials(site, Optional.of(text(value)));
      case MACHINE_WIDTH -> machine(site, amount(value));
      case HEADER, FOOTING, KEEP, BASIS, LARGEST_POST, LARGEST_HEADER, LARGEST_CROSSBEAM ->
          preferences(site, text(value));
      default -> throw unknown();
    };
  }

  private Site walkway(Site site, double in) {
    Site.Walkway now = site.walkway();
    return site.with(
        switch (demand) {
          case WALK_LENGTH -> now.ofLength(in);
          case CLEAR_WIDTH -> now.ofClearWidth(in);
          default -> now.ofHeadroom(in);
        });
  }

  /** Bays that are told one by one stay as they are while their number does. */
  private static Site divided(Site site, int bays, double lengthIn) {
    boolean told = site.walkway().baysIn().size() == bays;
    if (told && lengthIn == site.walkway().lengthIn()) {
      return site;
    }
    return site.with(site.walkway().dividedInto(bays, lengthIn));
  }

  /**
   * Longer or shorter bays, as many as before.
   *
   * @throws IllegalArgumentException where the site does not say how many
   */
  private static Site stretched(Site site, double bayIn) {
    int bays =
        site.walkway()
            .bays()
            .orElseThrow(() -> new IllegalArgumentException("a site that names no number of bays"));
    Optional<Bays> told = site.walkway().divided();
    return told.isPresent()
        ? site.with(
            site.walkway().ofLength(site.walkway().lengthIn() * bayIn / told.get().longestIn()))
        : divided(site, bays, bays * bayIn);
  }

  /** The widest machine, which is the one that asks. */
  private static Optional<Site.User.Machine> machine(Site site) {
    return site.walkway().users().stream()
        .filter(Site.User.Machine.class::isInstance)
        .map(Site.User.Machine.class::cast)
        .max(Comparator.comparingDouble(Site.User.Machine::machineWidthIn));
  }

  private static Site machine(Site site, double widthIn) {
    List<Site.User> users = new ArrayList<>(site.walkway().users());
    users.set(users.indexOf(machine(site).orElseThrow()), new Site.User.Machine(widthIn));
    return site.with(site.walkway().forUsers(users));
  }

  private Site preferences(Site site, String word) {
    Site.Preferences now = site.preferences();
    Site.Preferences then =
        new Site.Preferences(
            demand == Demand.FOOTING ? word : now.footing(),
            demand == Demand.HEADER ? word : now.header(),
            demand == Demand.KEEP ? word : now.keep(),
            demand == Demand.BASIS ? word : now.basis(),
            now.embedmentBasis(),
            now.riskCategory(),
            now.snowShare(),
            now.crossbeamsAtPosts(),
            largest(now.largest(), word));
    return site.with(then);
  }

  private Site.Largest largest(Site.Largest now, String size) {
    Optional<String> then = Optional.of(size);
    return new Site.Largest(
        demand == Demand.LARGEST_POST ? then : now.post(),
        demand == Demand.LARGEST_HEADER ? then : now.header(),
        demand == Demand.LARGEST_CROSSBEAM ? then : now.crossbeam());
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
            now.meanAnnualF(),
            weather(now.weather()));
    return site.with(then);
  }

  /** What is searched along is a gust at strength level, and snow on the ground. */
  private Site.Weather weather(Site.Weather now) {
    return switch (demand) {
      case WIND_SPEED -> now.gusting();
      case GROUND_SNOW -> now.snowing();
      default -> now;
    };
  }

  private static Site planting(Site site, String vine) {
    List<Site.Planting> planting = new ArrayList<>(site.planting());
    if (planting.isEmpty()) {
      planting.add(new Site.Planting(vine));
    } else {
      planting.set(0, new Site.Planting(vine));
    }
    return site.planted(planting);
  }

  private Site materials(Site site, Optional<String> word) {
    Site.Materials now = site.materials();
    Site.Materials then =
        new Site.Materials(
            demand == Demand.SPECIES ? word : now.species(),
            demand == Demand.GRADE ? word : now.grade(),
            now.market(),
            now.byRole());
    return site.with(then);
  }

  private Optional<Outcome> number(OptionalDouble number) {
    return number.isPresent()
        ? Optional.of(new Outcome.Amount(new Measure(number.getAsDouble(), demand.unit())))
        : Optional.empty();
  }

  private Optional<Outcome> number(Optional<Double> number) {
    return number.map(each -> new Outcome.Amount(new Measure(each, demand.unit())));
  }

  /** Nothing is stated where the file leaves it to the rules. */
  private static Optional<Outcome> wish(String word) {
    return word.equals(AUTO) ? Optional.empty() : Optional.of(new Outcome.Word(word));
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
        demand.path() + " is not a demand along which turning points can be searched");
  }
}

package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.CrossFall;
import org.scantling.design.Locality;
import org.scantling.design.Site;
import org.scantling.reasons.Chosen;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Given;
import org.scantling.reasons.LargestAsked;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;

/** The demands of a site as facts; what the file does not state is no fact. */
final class SiteFacts {
  private final List<Fact> facts = new ArrayList<>();

  private SiteFacts() {}

  static List<Fact> of(Site site, Tables tables) {
    SiteFacts all = new SiteFacts();
    all.climate(site.climate(), tables);
    all.walkway(site.walkway(), tables);
    site.ground().soil().ifPresent(soil -> all.word(Demand.SOIL, soil));
    all.number(Demand.SLOPE, OptionalDouble.of(site.ground().slopePercent()));
    all.across(site.ground().across());
    all.number(Demand.ROCK_AT, site.ground().rockAtIn());
    all.word(Demand.ISOLATED_POSTS, site.ground().isolatedPosts());
    site.planting().forEach(each -> all.word(Demand.VINE, each.vine()));
    all.word(Demand.SPECIES, site.materials().species());
    all.word(Demand.GRADE, site.materials().grade());
    all.preferences(site.preferences());
    all.largest(site.preferences().largest(), tables);
    return all.facts;
  }

  private static String place(Locality place) {
    if (place instanceof Locality.County county) {
      return county.county() + ", " + county.state();
    }
    Locality.Point point = (Locality.Point) place;
    return degrees(point.latitudeDegrees(), "N", "S")
        + ", "
        + degrees(point.longitudeDegrees(), "E", "W");
  }

  /** Without a sign: a hyphen of a word is told as a blank. */
  private static String degrees(double degrees, String above, String below) {
    return Math.abs(degrees) + " " + (degrees < 0 ? below : above);
  }

  private void across(CrossFall across) {
    if (across.sharePercent() != 0) {
      facts.add(new Given(Demand.CROSS_SLOPE, across.sharePercent()));
    }
    if (across.toldIn() != 0) {
      facts.add(new Given(Demand.CROSS_FALL, across.toldIn()));
    }
  }

  private void climate(Site.Climate climate, Tables tables) {
    number(Demand.FROST_DEPTH, climate.frostDepthIn());
    number(Demand.GROUND_SNOW, climate.groundSnowPsf());
    number(Demand.WIND_SPEED, climate.windSpeedMph());
    weather(climate.weather());
    climate.weather().place().ifPresent(place -> word(Demand.PLACE, place(place)));
    word(Demand.EXPOSURE, climate.exposure());
    number(Demand.FREEZING_INDEX, climate.freezingIndexFDays());
    number(Demand.MEAN_ANNUAL, climate.meanAnnualF());
    climate
        .hardinessZone()
        .ifPresent(
            zone -> {
              facts.add(new Given(Demand.HARDINESS_ZONE, zone));
              facts.add(tables.zones().row(Integer.toString((int) zone)));
            });
  }

  private void weather(Site.Weather weather) {
    word(Demand.WIND_BASIS, weather.windBasis());
    number(Demand.WIND_HOURLY, weather.hourlyPressurePsf());
    weather.snow().ifPresent(snow -> facts.add(new Given(Demand.GROUND_SNOW_SS, snow.groundPsf())));
    weather.snow().ifPresent(snow -> facts.add(new Given(Demand.GROUND_SNOW_SR, snow.rainPsf())));
    number(Demand.ROOF_LIVE, weather.roofLivePsf());
    word(Demand.HILL, weather.hill().map(Site.Hill::shape));
  }

  private void walkway(Site.Walkway walkway, Tables tables) {
    facts.add(new Given(Demand.WALK_LENGTH, walkway.lengthIn()));
    walkway.bays().ifPresent(bays -> facts.add(new Given(Demand.BAYS, bays)));
    walkway
        .divided()
        .filter(bays -> !bays.even())
        .ifPresent(bays -> facts.add(new Given(Demand.BAY, bays.longestIn())));
    if (!walkway.free().isEmpty()) {
      facts.add(new Given(Demand.NO_POST, walkway.free().size()));
    }
    number(Demand.CLEAR_WIDTH, walkway.clearWidthIn());
    number(Demand.HEADROOM, walkway.headroomIn());
    for (Site.User user : walkway.users()) {
      if (user instanceof Site.User.Known known) {
        facts.add(tables.user(known.kind()));
      } else if (user instanceof Site.User.Machine machine) {
        facts.add(new Given(Demand.MACHINE_WIDTH, machine.machineWidthIn()));
      }
    }
  }

  private void preferences(Site.Preferences preferences) {
    word(Demand.FOOTING, preferences.footing());
    word(Demand.HEADER, preferences.header());
    word(Demand.KEEP, preferences.keep());
    word(Demand.BASIS, preferences.basis());
    word(Demand.EMBEDMENT_BASIS, preferences.embedmentBasis());
    word(Demand.RISK_CATEGORY, preferences.riskCategory());
    word(Demand.SNOW_SHARE, preferences.snowShare());
    word(Demand.CROSSBEAMS_AT_POSTS, preferences.crossbeamsAtPosts());
  }

  private void largest(Site.Largest largest, Tables tables) {
    largest(Question.POST_SIZE, Demand.LARGEST_POST, largest.post(), tables);
    largest(Question.HEADER_SIZE, Demand.LARGEST_HEADER, largest.header(), tables);
    largest(Question.CROSSBEAM_SIZE, Demand.LARGEST_CROSSBEAM, largest.crossbeam(), tables);
  }

  private void largest(Question question, Demand demand, Optional<String> name, Tables tables) {
    name.map(tables::size)
        .map(
            size ->
                new LargestAsked(question, demand, size.id(), size.thicknessIn(), size.widthIn()))
        .ifPresent(facts::add);
  }

  private void number(Demand demand, OptionalDouble number) {
    number.ifPresent(value -> facts.add(new Given(demand, value)));
  }

  private void word(Demand demand, Optional<String> word) {
    word.ifPresent(value -> word(demand, value));
  }

  private void word(Demand demand, String word) {
    facts.add(new Chosen(demand, word));
  }
}

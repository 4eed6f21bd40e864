package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The wind and the snow that a site file gives are taken for what they are, or asked about. */
class GivenWindTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final String LANE = "scenarios/mower-lane.yaml";
  private static final String RIDGE = "src/test/resources/rulecases/sites/canadian-ridge.yaml";

  private static Run run(String site, String... settings) {
    List<String> args = new ArrayList<>(List.of("propose", site, "--format", "json"));
    for (String setting : settings) {
      args.add("--set");
      args.add("site.climate." + setting);
    }
    return Run.of(args.toArray(String[]::new));
  }

  private static JsonNode proposed(String site, String... settings) {
    return JSON.readTree(run(site, settings).endedWith(0).out());
  }

  private static double criterion(JsonNode proposal, String name) {
    return proposal.get("criteria").get(name).asDouble();
  }

  private static List<String> cautions(JsonNode proposal) {
    List<String> rules = new ArrayList<>();
    proposal.get("cautions").forEach(each -> rules.add(each.get("rule").asString()));
    return rules;
  }

  @Test
  void a_gust_of_an_older_map_counts_as_the_larger_one_of_a_newer() {
    // 89 / sqrt(0.6): a county prints 89 mph beside 115 mph.
    JsonNode proposal = proposed(LANE, "wind-speed=89 mph", "wind-basis=allowable-gust");
    assertThat(criterion(proposal, "windSpeedMph")).isCloseTo(114.9, within(0.05));
    assertThat(cautions(proposal)).doesNotContain("cautions.older-wind");
  }

  @Test
  void a_mean_of_ten_minutes_counts_with_its_gusts_and_as_a_storm_of_strength_level() {
    // 27.5 m/s is 61.52 mph; times 1.43 by the Durst curve and sqrt(1.6), both from memory.
    JsonNode proposal = proposed(LANE, "wind-speed=27.5 m/s", "wind-basis=mean-10-minute");
    assertThat(criterion(proposal, "windSpeedMph")).isCloseTo(111.27, within(0.05));
  }

  @Test
  void an_hourly_pressure_counts_by_the_greater_of_gusts_and_equal_pressure() {
    // 0.36 kPa: 52.8 mph by the hour, gusts of 101.5; equal pressure among houses, 1.4 * 0.7 * 2 *
    // 7.519 psf over 0.00256 * 0.5747 * 0.85 * 0.85, is 117.7 mph squared.
    JsonNode proposal = proposed(RIDGE);
    assertThat(criterion(proposal, "windSpeedMph")).isCloseTo(117.7, within(0.1));
    assertThat(proposal.toString())
        .contains("climate.wind.mean")
        .contains("climate.wind.equal-pressure");
  }

  @Test
  void snow_and_rain_of_canadian_tables_count_as_the_ground_snow_of_equal_load() {
    // (0.8 * 1.9 + 0.4) kPa = 40.1 psf on a roof, over 0.7 * 1.2.
    assertThat(criterion(proposed(RIDGE), "groundSnowPsf")).isCloseTo(47.74, within(0.05));
  }

  @Test
  void an_official_s_load_on_the_top_takes_the_place_of_a_smaller_one() {
    assertThat(criterion(proposed(RIDGE), "livePsf")).isEqualTo(20);
    assertThat(criterion(proposed(LANE), "livePsf")).isEqualTo(10);
    assertThat(criterion(proposed(LANE, "roof-live=5 psf"), "livePsf")).isEqualTo(10);
  }

  @Test
  void a_ridge_makes_the_wind_press_harder() {
    // K1 1.30 * 70/250, K2 1 - 30/375, K3 e^(-3 * 4/250) at half of some 8 ft: 1.74 times
    // 0.00256 * 0.5747 * 0.85 * 117.7^2.
    JsonNode proposal = proposed(RIDGE);
    assertThat(criterion(proposal, "windPressurePsf")).isCloseTo(1.74 * 17.34, within(0.2));
    assertThat(cautions(proposal)).contains("cautions.hill").doesNotContain("cautions.hill-named");
  }

  @Test
  void a_name_that_says_hill_is_asked_about() {
    assertThat(cautions(proposed("scenarios/windy-hill.yaml"))).contains("cautions.hill-named");
    assertThat(cautions(proposed(LANE))).doesNotContain("cautions.hill-named");
  }

  @Test
  void a_guess_from_a_zone_is_raised_where_people_gather() {
    JsonNode proposal = proposed("src/test/resources/rulecases/sites/fairground.yaml");
    assertThat(criterion(proposal, "windSpeedMph")).isCloseTo(126.5, within(1e-6));
  }

  @Test
  void a_speed_that_is_no_gust_is_refused_with_what_it_may_be() {
    Run slow = run(LANE, "wind-speed=55 mph").endedWith(2);
    assertThat(slow.err().replaceAll("\\s+", " "))
        .contains("Maybe it is a mean? Then say wind-basis: mean-10-minute or mean-hourly.");
  }

  @Test
  void a_speed_between_the_maps_is_asked_about_until_the_file_says_what_it_is() {
    assertThat(cautions(proposed(LANE, "wind-speed=94 mph"))).contains("cautions.older-wind");
    assertThat(cautions(proposed(LANE, "wind-speed=94 mph", "wind-basis=strength-gust")))
        .doesNotContain("cautions.older-wind");
    assertThat(cautions(proposed(LANE, "wind-speed=76 mph", "wind-basis=mean-10-minute")))
        .contains("cautions.wind-high");
  }

  @Test
  void a_load_in_kilopascals_that_cannot_be_is_answered_in_kilopascals() {
    // 2 psf is 0.096 kPa and 50 psf 2.394; 110 mph is 177 km/h.
    assertThat(run(RIDGE, "wind-pressure=9 kPa").endedWith(2).err().replaceAll("\\s+", " "))
        .contains("9 kPa must be from 0.1 kPa to 2.39 kPa");
    assertThat(
            run(LANE, "wind-speed=200 km/h", "wind-basis=mean-hourly")
                .endedWith(2)
                .err()
                .replaceAll("\\s+", " "))
        .contains("to 177 km/h as an hourly mean");
  }

  @Test
  void a_load_that_the_file_has_in_kilopascals_is_given_back_so() {
    // 1.9 kPa over 0.04788.
    Run feet = Run.of("propose", LANE, "--set", "site.climate.ground-snow=1.9 kPa").endedWith(0);
    assertThat(feet.out().replaceAll("\\s+", " "))
        .contains("Snow on the ground 1.9 kPa (39.7 psf).");
    Run plain = Run.of("propose", LANE, "--set", "site.climate.ground-snow=40 psf").endedWith(0);
    assertThat(plain.out().replaceAll("\\s+", " ")).contains("Snow on the ground 40 psf.");
  }

  /** 95 mph is 42.47 m/s. */
  @Test
  void the_caution_about_older_maps_counts_wind_as_its_page_does() {
    String metric = "scenarios/proven-ground.yaml";
    assertThat(Run.of("propose", metric).out().replaceAll("\\s+", " "))
        .contains("A wind of 42 m/s looks like", "speeds from about 42.5 m/s up")
        .doesNotContain("mph");
    assertThat(
            Run.of("propose", LANE, "--set", "site.climate.wind-speed=94 mph")
                .out()
                .replaceAll("\\s+", " "))
        .contains("speeds from about 95 mph up");
  }
}

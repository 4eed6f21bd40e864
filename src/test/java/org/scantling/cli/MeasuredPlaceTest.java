package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is stated for a place against what is measured near it. */
class MeasuredPlaceTest {
  private static final String SITE = "scenarios/mower-lane.yaml";
  private static final String STATIONS = "weather stations nearest to you";

  /** Montpelier, Vermont: the nearest stations have some 50 to 60 psf. */
  private static final String VERMONT = "site.place=44.26, -72.58";

  @Test
  void a_point_is_told_with_its_sides_of_the_earth() {
    assertThat(said("propose", SITE, "--set", VERMONT)).contains("Place 44.26 N, 72.58 W.");
  }

  @Test
  void snow_far_below_the_nearest_stations_is_told_to_every_reader_and_changes_nothing() {
    String plain = said("propose", SITE, "--format", "yaml");

    assertThat(said("propose", SITE, "--format", "yaml", "--set", VERMONT)).isEqualTo(plain);
    assertThat(said("propose", SITE, "--set", VERMONT))
        .contains("This counts on 25 psf of snow; the middle of the 3 nearest stations (")
        .contains("Ask the building department before you go on: nothing here was changed by it.");
    assertThat(said("propose", SITE, "--for", "client", "--set", VERMONT)).contains(STATIONS);
    assertThat(said("propose", SITE, "--for", "engineer", "--set", VERMONT))
        .contains("3 nearest stations");
  }

  @ParameterizedTest
  @ValueSource(strings = {"36.07, -79.49", "0, 0", "Alamance, North Carolina"})
  void where_it_snows_no_more_or_nobody_measures_nothing_is_told(String place) {
    assertThat(said("propose", SITE, "--set", "site.place=" + place))
        .doesNotContain("nearest station", "freezing index of");
  }

  /** Lake County, Colorado, has 3,500 degree-days. */
  @Test
  void frost_far_below_what_the_county_has_is_told() {
    String county = "site.place=Lake County, Colorado";

    assertThat(said("propose", SITE, "--set", county))
        .contains("This counts on frost 2'-6\" deep; the freezing index of Lake County, Colorado")
        .contains("Ask the building department before you dig: nothing here was changed by it.");
    assertThat(said("propose", SITE, "--set", county, "--set", "site.climate.frost-depth=5 ft"))
        .doesNotContain("Lake County, Colorado (");
  }

  @Test
  void a_place_that_is_none_is_refused() {
    assertThat(
            Run.of("propose", SITE, "--set", "site.place=somewhere")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err()
                .replaceAll("\\s+", " "))
        .contains("site.place: somewhere must be a latitude and a longitude, such as 44.26, -72.58")
        .contains("or a county and its state, such as Lamoille County, Vermont.");
  }

  private static String said(String... args) {
    return Run.of(args).endedWith(ExitStatus.ANSWERED).out().replaceAll("\\s+", " ");
  }
}

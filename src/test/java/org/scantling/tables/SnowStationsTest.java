package org.scantling.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class SnowStationsTest {
  private static final double MILE_FT = 5280;

  @Test
  void every_station_lies_in_north_america_and_has_a_snow_that_can_be() {
    List<SnowStation> all = SnowStations.measured().all();

    assertThat(all).hasSize(10_716);
    assertThat(all)
        .allMatch(each -> each.latitudeDegrees() > 24 && each.latitudeDegrees() < 84)
        .allMatch(each -> each.longitudeDegrees() > -180 && each.longitudeDegrees() < -50)
        .allMatch(each -> each.snowPsf() > 0 && each.snowPsf() < 1500)
        .allMatch(each -> each.name().matches("\\S.*") && each.state().matches("[A-Z]{2}"));
  }

  /** New York to Los Angeles, by their airports: 2,475 miles along the surface of the earth. */
  @Test
  void distances_are_those_along_the_surface_of_the_earth() {
    SnowStation kennedy = new SnowStation("Kennedy", "NY", 40.6413, -73.7781, 20);

    assertThat(kennedy.distanceFt(33.9416, -118.4085) / MILE_FT).isCloseTo(2475, within(10.0));
    assertThat(kennedy.distanceFt(40.6413, -73.7781)).isZero();
  }

  @Test
  void the_nearest_come_first_and_none_from_too_far() {
    List<SnowStation> near = SnowStations.measured().near(44.26, -72.58, 5, 50 * MILE_FT);

    assertThat(near).hasSize(5).allMatch(each -> each.state().equals("VT"));
    assertThat(near)
        .isSortedAccordingTo(
            (one, other) ->
                Double.compare(one.distanceFt(44.26, -72.58), other.distanceFt(44.26, -72.58)));
    assertThat(SnowStations.measured().near(0, 0, 5, 50 * MILE_FT)).isEmpty();
  }

  @Test
  void the_notice_of_the_data_ships_with_it() throws IOException {
    try (InputStream notice =
        SnowStations.class.getResourceAsStream("/org/scantling/stations/NOTICE.txt")) {
      assertThat(new String(notice.readAllBytes(), StandardCharsets.UTF_8))
          .contains("MIT License", "Copyright (c) 2019 Brennan Bean", "10,716 weather stations");
    }
  }
}

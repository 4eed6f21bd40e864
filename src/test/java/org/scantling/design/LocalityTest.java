package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalityTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "44.26, -72.58",
        "44.26 -72.58",
        "44.26 N, 72.58 W",
        "44.26n 72.58w",
        " 44.26\u00b0 N, -72.58"
      })
  void a_point_is_a_latitude_and_a_longitude(String text) {
    assertThat(Locality.of(text)).contains(new Locality.Point(44.26, -72.58));
  }

  @Test
  void south_and_east_are_told_by_their_letters() {
    assertThat(Locality.of("33.9 S, 151.2 E")).contains(new Locality.Point(-33.9, 151.2));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Lamoille, Vermont", "Lamoille County, Vermont", " Lamoille ,Vermont "})
  void a_county_goes_with_its_state(String text) {
    assertThat(Locality.of(text)).contains(new Locality.County("Lamoille", "Vermont"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "Vermont", "44.26", "144, -72", "44, -272", "44.26, -72.58, 3", "a, b"})
  void anything_else_is_no_place(String text) {
    assertThat(Locality.of(text)).isEmpty();
  }
}

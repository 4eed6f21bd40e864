package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.scantling.cli.Run;
import org.scantling.loads.HourlyWind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Places whose snow, rain and wind are printed in the National Building Code of Canada, put into
 * site files as printed, against calculations by hand in SI units that stand beside them in {@code
 * northern-places.csv}. How far the ground freezes is not printed there; the depth of the site is
 * an example.
 */
class NorthernPlacesTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Path BASE =
      Path.of("src/test/resources/rulecases/sites/base/plain-gate.yaml");

  private static final double HALF_A_MPH = 0.5;
  private static final double A_TENTH_PSF = 0.1;

  private static final double HALF_A_DIGIT_OF_THE_TABLE = 0.05 + 1e-9;

  @TempDir Path folder;

  @BeforeEach
  void copy_the_base() throws IOException {
    Files.createDirectory(folder.resolve("base"));
    Files.copy(BASE, folder.resolve("base/arbour.yaml"));
  }

  private String site(String snow, String rain, String wind) {
    String text =
        """
        title: Bower in the north
        base: base/arbour.yaml
        site:
          climate:
            frost-depth: 1.2 m
            snow: { ss: %s kPa, sr: %s kPa }
            wind-pressure: %s kPa
            exposure: C
          soil: sandy-gravel
        walkway: { length: 8 ft }
        planting: [ { vine: clematis } ]
        """
            .formatted(snow, rain, wind);
    try {
      return Files.writeString(folder.resolve("place.yaml"), text).toString();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private String site(ArgumentsAccessor place) {
    return site(place.getString(2), place.getString(3), place.getString(4));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/verification/northern-places.csv", numLinesToSkip = 1)
  void a_printed_climate_counts_as_it_does_by_hand(ArgumentsAccessor place) {
    String site = site(place);
    if (place.getString(13).equals("refused")) {
      assertThat(said(3, "propose", site))
          .containsAnyOf("site.climate.snow.ss", "site.climate.wind-pressure");
      return;
    }
    JsonNode proposal =
        JSON.readTree(Run.of("propose", site, "--format", "json").endedWith(0).out());
    JsonNode criteria = proposal.get("criteria");
    assertThat(criteria.get("groundSnowPsf").asDouble())
        .isCloseTo(place.getDouble(7), within(A_TENTH_PSF));
    assertThat(criteria.get("windSpeedMph").asDouble())
        .isCloseTo(place.getDouble(12), within(HALF_A_MPH));
    // 1.2 m over 0.0254.
    assertThat(criteria.get("frostDepthIn").asDouble()).isCloseTo(47.24, within(0.005));
    assertThat(otherCode(proposal)).hasSize(1);
  }

  private static List<String> otherCode(JsonNode proposal) {
    return StreamSupport.stream(proposal.get("cautions").spliterator(), false)
        .map(each -> each.get("text").asString())
        .filter(text -> text.contains("another country's tables"))
        .toList();
  }

  @ParameterizedTest(name = "{0} kPa is {1} m/s")
  @CsvFileSource(resources = "/verification/hourly-wind.csv", numLinesToSkip = 1)
  void an_hourly_pressure_is_the_mean_speed_that_is_printed_beside_it(double kpa, double metres) {
    double psf = kpa / 0.04788026;
    assertThat(HourlyWind.ofPressure(psf).speedMph() * 0.44704)
        .isCloseTo(metres, within(HALF_A_DIGIT_OF_THE_TABLE));
  }

  @Test
  void a_builder_reads_the_printed_numbers_beside_what_they_count_for() {
    // Guelph, Ontario.
    String site = site("1.9", "0.4", "0.36");
    assertThat(said(0, "why", site, "wind"))
        .contains("0.36 kPa (7.5 psf) an hour, 1 in 50 years, is 110 mph as these rules count wind")
        .doesNotContainPattern("\\d\\.\\d{3}");
    assertThat(said(0, "why", site, "snow"))
        .contains("1.9 kPa (39.7 psf) of snow and 0.4 kPa (8.4 psf) of rain, 1 in 50 years, are")
        .contains("47.7 psf on the ground as these rules count snow")
        .doesNotContainPattern("\\d\\.\\d{3}");
    assertThat(said(0, "why", site, "snow", "--units", "metric"))
        .contains("1.9 kPa of snow and 0.4 kPa of rain, 1 in 50 years, are 2.29 kPa on the ground");
  }

  @Test
  void an_engineer_reads_every_step_of_it_in_either_units() {
    String site = site("1.9", "0.4", "0.36");
    assertThat(said(0, "why", site, "wind", "--for", "engineer"))
        .contains("(2 x 1000 x 0.36 kPa / 1.2929)^0.5 / 0.44704 = 52.79 mph")
        .contains("V = v gf f50^0.5 = 52.79 mph x 1.52 x 1.6^0.5 = 101.5 mph")
        .contains("(1.4 x 0.9 x 2 x 20.885 x 0.36 kPa / (0.00256 x 0.8489 x 0.85 x 0.85))^0.5");
    assertThat(said(0, "why", site, "snow", "--for", "engineer", "--units", "metric"))
        .contains("S = Cb Ss + Sr = 0.8 x 1.9 kPa + 0.4 kPa = 1.92 kPa")
        .contains("pg = S / (0.7 Ct) = 1.92 kPa / (0.7 x 1.2) = 2.286 kPa");
  }

  /**
   * Among houses the Canadian exposure factor stops at 0.7 (NBC 2020 4.1.7.3, from memory) and Kz
   * of exposure B is 2.01 (15/1200)^(2/7) = 0.5747: V^2 = 1.4 x 0.7 x 2 x 7.519 psf / (0.00256 x
   * 0.5747 x 0.85 x 0.85), V = 117.7 mph, where open country gives 109.9.
   */
  @Test
  void among_houses_an_hourly_pressure_is_no_less_than_its_own_code_takes_there() {
    String site = site("1.9", "0.4", "0.36");
    JsonNode proposal =
        JSON.readTree(
            Run.of("propose", site, "--set", "site.climate.exposure=B", "--format", "json")
                .endedWith(0)
                .out());
    assertThat(proposal.get("criteria").get("windSpeedMph").asDouble())
        .isCloseTo(117.7, within(0.1));
  }

  @Test
  void a_client_reads_it_without_a_broken_sentence() {
    String site = site("1.9", "0.4", "0.36");
    assertThat(said(0, "why", site, "snow", "--for", "client"))
        .contains("is as heavy as water standing 9 in deep, counted the way these rules count snow")
        .doesNotContain("as as");
  }

  @Test
  void snow_in_two_parts_that_is_too_much_is_refused_by_the_part_that_would_help() {
    // Nelson, British Columbia: the snow may be no more than 70 psf, 3.35 kPa, itself; by snow and
    // rain it would be (0.84 x 3.3517 - 0.1) / 0.8 = 3.39 kPa. With a rain of 0.6 kPa it is (0.84 x
    // 3.3517 - 0.6) / 0.8 = 2.769 kPa.
    String nelson = said(3, "propose", site("4.2", "0.1", "0.33"));
    assertThat(nelson)
        .contains("4.2 kPa (87.7 psf) of snow and the rain in it come to 87.7 psf on the ground")
        .contains("With snow Ss of 3.35 kPa (70 psf) or less (--set \"site.climate.snow.ss=...\")")
        .contains("these rules are those of United States codes");
    assertThat(said(3, "propose", site("3", "0.6", "0.4"))).contains("2.76 kPa (57.6 psf) or less");
    Run.of("propose", site("2.76", "0.6", "0.4")).endedWith(0);
    Run.of("propose", site("2.77", "0.6", "0.4")).endedWith(3);
  }

  @Test
  void an_hourly_pressure_that_is_too_much_is_refused_as_a_pressure() {
    // Lethbridge, Alberta: 148.8 mph by the frames; 0.66 x (140 / 148.8)^2 = 0.584 kPa.
    assertThat(said(3, "propose", site("1.2", "0.1", "0.66")))
        .contains("0.66 kPa (13.8 psf) an hour works out to a gust of 149 mph at strength level")
        .contains("0.58 kPa (12.1 psf) or less (--set \"site.climate.wind-pressure=...\")");
    Run.of("propose", site("1.2", "0.1", "0.58")).endedWith(0);
    Run.of("propose", site("1.2", "0.1", "0.59")).endedWith(3);
  }

  private static String said(int status, String... args) {
    return Run.of(args).endedWith(status).out().replaceAll("\\s+", " ");
  }
}

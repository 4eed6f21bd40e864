package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a proposal says of things that a number alone would leave unsaid. */
class PlainWordsTest {
  private static String propose(String... more) {
    String[] all = new String[more.length + 2];
    all[0] = "propose";
    all[1] = "scenarios/long-walk.yaml";
    System.arraycopy(more, 0, all, 2, more.length);
    return Run.of(all).out().replaceAll("\\s+", " ");
  }

  @Test
  void a_higher_risk_category_says_that_the_wind_is_used_as_it_stands() {
    assertThat(propose("--set", "preferences.risk-category=II"))
        .contains("leaves the wind as the file has it: each category has a wind map of its own");
    assertThat(propose()).doesNotContain("wind map of its own");
  }

  @Test
  void half_a_hardiness_zone_goes_by_its_letter() {
    assertThat(propose("--set", "site.climate={hardiness-zone: 5b}"))
        .contains("hardiness zone 5b")
        .doesNotContain("5.5");
  }

  @Test
  void wind_is_told_in_metres_a_second_as_metric_codes_have_it() {
    assertThat(propose("--units", "metric", "--set", "site.climate.wind-speed=50 m/s"))
        .contains("50 m/s")
        .doesNotContain("km/h");
  }
}

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
        .containsIgnoringCase("hardiness zone 5b")
        .doesNotContain("5.5");
  }

  private static String site(String site, String... more) {
    String[] all = new String[more.length + 2];
    all[0] = "propose";
    all[1] = "scenarios/" + site + ".yaml";
    System.arraycopy(more, 0, all, 2, more.length);
    return Run.of(all).out().replaceAll("\\s+", " ");
  }

  @Test
  void a_way_too_high_is_told_how_long_the_post_would_be_and_how_long_it_may_be() {
    assertThat(site("bean-row", "--set", "walkway.headroom=11ft6in"))
        .contains(
            "For 11'-6\" of headroom, with the headers and notches counted, the post is 12'-3 1/4\"."
                + " (geometry) The whole may reach 12'-0\", so the post 11'-9\".");
  }

  @Test
  void a_way_as_high_as_the_whole_may_be_is_not_told_that_it_would_do() {
    assertThat(site("bean-row", "--set", "walkway.headroom=12ft"))
        .contains("these rules end at 12'-0\" with the timber over it counted")
        .contains("so much less than 12'-0\" that the timber over it fits in")
        .doesNotContain("12'-0\" or less");
  }

  @Test
  void what_was_set_is_not_told_as_given_in_the_file() {
    String told = propose("--set", "walkway.headroom=7ft6in", "--set", "planting[0].vine=grape");
    assertThat(told)
        .contains("Set beside the site file (--set)")
        .containsPattern("--set\\) -+ Headroom 7'-6\"; climber grape\\.");
    assertThat(propose()).doesNotContain("Set beside the site file");
  }

  @Test
  void two_wishes_for_one_site_do_not_differ_in_the_files() {
    String told =
        Run.of("compare", "scenarios/mower-lane.yaml", "--set", "walkway.length=44ft").out();
    assertThat(told)
        .contains("Set otherwise beside the file (--set): length of the walk.")
        .doesNotContain("in the files");
  }

  @Test
  void timber_on_brackets_is_told_what_treatment_it_wants() {
    assertThat(site("stone-terrace", "--list", "buying"))
        .contains("All of it stands clear of the ground", "treated for that (UC3B)")
        .doesNotContain("UC4B");
    assertThat(site("bean-row", "--list", "buying"))
        .contains("All other timber stands clear of the ground", "treated for that (UC3B)")
        .contains("posts, for use in the ground (UC4B)");
    assertThat(site("bean-row", "--list", "buying", "--format", "csv"))
        .contains("pickets\",,UC3B", "(UC4B)\",,UC4B");
  }

  @Test
  void a_bag_is_told_by_its_size() {
    assertThat(site("bean-row", "--list", "buying")).contains("20 x 50 lb bag gravel");
    assertThat(site("metric-country", "--list", "buying")).contains(" x 25 kg bag gravel");
  }

  @Test
  void wind_is_told_in_metres_a_second_as_metric_codes_have_it() {
    assertThat(propose("--units", "metric", "--set", "site.climate.wind-speed=50 m/s"))
        .contains("50 m/s")
        .doesNotContain("km/h");
  }
}

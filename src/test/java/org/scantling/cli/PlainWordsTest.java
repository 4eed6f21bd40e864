package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
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
        .contains(
            "Each category has a wind map of its own: a wind speed in the file is taken as read from");
    assertThat(propose()).doesNotContain("wind map of its own");
  }

  @Test
  void half_a_hardiness_zone_goes_by_its_letter() {
    assertThat(propose("--set", "site.climate={hardiness-zone: 5b}"))
        .containsIgnoringCase("hardiness zone 5b")
        .doesNotContain("5.5");
  }

  private static String why(String site, String subject, String reader, String... set) {
    List<String> all = new ArrayList<>(List.of("why", "scenarios/" + site + ".yaml", subject));
    all.addAll(List.of("--for", reader));
    List.of(set).forEach(each -> all.addAll(List.of("--set", each)));
    return Run.of(all.toArray(String[]::new)).out().replaceAll("\\s+", " ");
  }

  @Test
  void whoever_asked_for_bays_that_cannot_be_is_told_so_first() {
    String[] two = {"walkway.length=30ft", "walkway.bays=2"};
    assertThat(why("bean-row", "bays", "client", two))
        .contains(
            "You asked for 2; over a walk 30 ft long that puts the posts 15 ft apart. With only 2,"
                + " the posts would stand 15 ft apart, farther than builders set them.");
    assertThat(why("bean-row", "bays", "builder", two))
        .contains("2 bays are asked for: 30'-0\" in 2 of 15'-0\". [layout.bays.asked;")
        .containsOnlyOnce("layout.bays.asked");
    assertThat(site("bean-row", "--set", two[0], "--set", two[1]))
        .contains("Number of bays: 3, was 2. 2 bays are asked for: 30'-0\" in 2 of 15'-0\".");
  }

  @Test
  void a_width_that_was_asked_for_and_gives_way_is_told_too() {
    assertThat(why("mower-lane", "width", "client", "walkway.clear-width=5 ft"))
        .contains("You asked for 5 ft between the posts. The machine is 6 ft wide");
  }

  @Test
  void what_was_asked_for_is_told_beside_the_chief_answer_too() {
    // The base: posts 100 in tall with boards 7 1/4 in deep at their sides, so 92 3/4 in below
    // them.
    assertThat(why("everything-at-once", "layout", "client"))
        .contains(
            "8 ft 2 in, instead of about 7 ft 9 in. You asked for 8 ft of height. The wisteria");
    assertThat(why("everything-at-once", "layout", "builder"))
        .contains("The site file asks for 8'-0\". [clearance.headroom.asked;");
  }

  @Test
  void the_weight_on_a_middle_post_is_no_cause_of_how_many_pickets_there_are() {
    // 74 in is two bays of 37: four bars, set for bays of 34, would leave wider gaps there.
    String longer = "walkway.length=74 in";
    assertThat(why("windy-hill", "picket", "client", longer))
        .contains("the number of gaps from post to post, 2 instead of 1.")
        .doesNotContain("takes the wind");
    assertThat(why("windy-hill", "footing.depth", "client", longer)).contains("takes the wind");
  }

  @Test
  void people_ask_by_words_of_their_own() {
    assertThat(why("bean-row", "standing", "client")).contains("How the posts stand");
    assertThat(why("bean-row", "species", "client")).contains("What timber it is made of");
    assertThat(why("bean-row", "brackets", "client")).contains("How the posts stand");
  }

  @Test
  void posts_grow_because_of_the_boards_at_their_sides() {
    String paired = "preferences.header=paired";
    assertThat(why("same-place", "post.height", "client", paired))
        .contains("stays clear below the timbers at their sides, which reach about 7 1/2 in down");
    assertThat(why("same-place", "post.height", "builder", paired))
        .contains("under headers that reach 7 1/4\" down the post");
    assertThat(why("bean-row", "post.height", "builder", "walkway.headroom=102 in"))
        .contains("For 8'-6\" of headroom, with the headers")
        .doesNotContain("headers that reach");
  }

  @Test
  void a_climber_that_the_base_lends_is_listed_with_what_was_assumed() {
    assertThat(site("same-place", "--set", "planting=[]"))
        .contains(
            "does not say -------------------------------------- - Climber: No climber is named;"
                + " the base carries climbing rose.");
    assertThat(site("same-place")).doesNotContain("No climber is named");
  }

  @Test
  void a_number_of_bays_that_leads_nowhere_says_which_part_fails_and_in_what() {
    assertThat(limitsOfBays("everything-at-once"))
        .contains(
            "it becomes 8. With 7, no post size works: sway at the header in service wind, its foot"
                + " turning, 16 % over.")
        .contains("With 9, no header joint works: end of a header piece on its post, 4 % over.");
  }

  @Tag("slow")
  @Test
  void a_number_of_bays_of_a_long_walk_that_leads_nowhere_says_so_too() {
    assertThat(limitsOfBays("long-walk"))
        .contains(
            "it becomes 10. With 9, no header joint works: end of a header piece on its post, 6 %"
                + " over.")
        .doesNotContain("just over");
  }

  private static String limitsOfBays(String site) {
    return Run.of("limits", "scenarios/" + site + ".yaml", "bays").out().replaceAll("\\s+", " ");
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
    // 138 in and boards 9 1/4 in deep: 147 1/4 in. 2x8 crossbeams with seats cut 1 in deep stand
    // 7 1/4 - 1 = 6 1/4 in above it: 144 - 6 1/4 = 137 3/4 in.
    String[] paired = {"--set", "walkway.headroom=11ft6in", "--set", "preferences.header=paired"};
    assertThat(site("bean-row", paired))
        .contains(
            "For 11'-6\" of headroom under headers that reach 9 1/4\" down the post, with the headers and notches counted, the post is 12'-3 1/4\"."
                + " (geometry) The whole structure may be 12'-0\" tall, which leaves 11'-5 3/4\" for"
                + " the post.");
  }

  @Test
  void a_way_as_high_as_the_whole_may_be_is_not_told_that_it_would_do() {
    assertThat(site("bean-row", "--set", "walkway.headroom=12ft"))
        .contains("these rules stop at 12'-0\", with the timber over it counted")
        .contains("enough below 12'-0\" that the timber over it fits in")
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
        .contains("Set differently from the file (--set): length of the walk.")
        .doesNotContain("in the files");
  }

  @Test
  void timber_on_brackets_is_told_what_treatment_it_wants() {
    String[] pine = {"--set", "materials.species=southern-pine", "--list", "buying"};
    assertThat(site("stone-terrace", pine))
        .contains("All of it is clear of the ground", "treated for that (UC3B)")
        .doesNotContain("UC4B");
    assertThat(site("bean-row", "--list", "buying"))
        .contains("All other timber is clear of the ground", "treated for that (UC3B)")
        .contains("posts, for use in the southern pine No.2, UC4B ground (UC4B)");
    assertThat(site("bean-row", "--list", "buying", "--format", "csv"))
        .contains(",pickets,,UC3B", "(UC4B)\",,UC4B");
  }

  @Test
  void a_bag_is_told_by_its_size() {
    // Eight holes 20 in wide and 56 + 8 in deep, less 2 in of pad and 56 in of a post 5 1/2 in
    // square: 62 * 314.16 - 1694 = 17,784 in3, 8 of which are 82.3 cu ft, a tenth more 90.6, and
    // half a cubic foot is in a bag.
    assertThat(site("bean-row", "--list", "buying")).contains("182 x 50 lb bag gravel");
    assertThat(site("metric-country", "--list", "buying")).contains(" x 25 kg bag gravel");
  }

  @Test
  void wind_is_told_in_metres_a_second_as_metric_codes_have_it() {
    assertThat(propose("--units", "metric", "--set", "site.climate.wind-speed=50 m/s"))
        .contains("50 m/s")
        .doesNotContain("km/h");
  }
}

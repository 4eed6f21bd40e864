package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences that a builder acts on say what is so, and ask nothing of him that hurts. */
class SaidTrulyTest {
  private static final String STICKS = "src/test/resources/designs/sticks.yaml";
  private static final String PLAIN =
      Path.of("src/test/resources/rulecases/sites/base/plain-gate.yaml")
          .toAbsolutePath()
          .toString();
  private static final String UNBRACED = "src/test/resources/designs/unbraced-on-brackets.yaml";

  /** 2 ft 6 in are dug where the doubled soil asks for about 7 ft. */
  @Test
  void holes_too_shallow_even_for_the_doubled_soil_are_not_said_to_rest_on_the_doubling() {
    assertThat(said("check", "scenarios/windy-hill.yaml", "--design", STICKS))
        .contains("depth against the sideways push")
        .doesNotContain("this shallow only because");
    assertThat(said("propose", "scenarios/same-place.yaml")).contains("this shallow only because");
  }

  @Test
  void what_sways_too_far_is_set_against_what_is_allowed() {
    assertThat(said("check", "scenarios/windy-hill.yaml", "--design", STICKS))
        .containsPattern("Header: total sag, creep included: [^.]* where \\S+ is allowed")
        .doesNotContainPattern("sag[^.:]* needs ")
        .contains("needs or moves");
  }

  @Test
  void the_two_sags_of_an_overhang_have_names_of_their_own() {
    assertThat(said("check", "scenarios/windy-hill.yaml", "--design", STICKS))
        .contains("total sag at the tip of the overhang:")
        .contains("sag at the tip of the overhang under snow or people alone:");
  }

  @Test
  void nobody_is_told_to_lean_on_posts_that_brackets_alone_hold() {
    assertThat(said("check", "scenarios/stone-terrace.yaml", "--design", UNBRACED))
        .contains("Posts on brackets do not stand by themselves")
        .contains("Without knee braces do not build it.")
        .doesNotContain("Lean it on")
        .doesNotContain("sway until the knee braces");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mower-lane", "long-walk", "windy-hill"})
  void a_share_of_a_prescribed_distance_is_not_compared_with_the_base(String site) {
    String sheet = said("propose", "scenarios/" + site + ".yaml");
    assertThat(sheet).contains("here than there, on its own site");
    assertThat(sheet.substring(sheet.indexOf("Compared with the")))
        .doesNotContainPattern("edge, end, spacing[^.]* here, ")
        .doesNotContainPattern("100 % here, ");
  }

  /**
   * Three posts of a row stand in the base already, and the middle one has a bay on either side.
   */
  @Test
  void a_base_with_a_post_inside_its_rows_does_not_give_that_as_what_is_new() {
    String more = "walkway.length=18ft";
    String inside = "a post inside a row takes the wind and the weight from both sides";
    String[] court = {
      "propose",
      "scenarios/same-place.yaml",
      "--set",
      "base=base/kiwi-court.yaml",
      "--set",
      more,
      "--set",
      "walkway.bays=3"
    };
    assertThat(said(court)).contains("number of bays").doesNotContain(inside);
    assertThat(said("propose", "scenarios/same-place.yaml", "--set", more)).contains(inside);
  }

  /** A length beside a list of bays would be refused. */
  @Test
  void where_bays_are_told_shorter_ones_are_offered_and_no_length() {
    String[] windy = {
      "propose",
      "scenarios/past-the-pipe.yaml",
      "--set",
      "site.climate.wind-speed=133 mph",
      "--set",
      "site.climate.exposure=C",
      "--set",
      "walkway.bays=[8 ft, 8 ft 2 in, 8 ft 4 in, 8 ft]"
    };
    assertThat(said(windy))
        .contains("Shorter bays (--set \"walkway.bays=[...]\") may bring it back inside.")
        .doesNotContain("--set \"walkway.length");
  }

  @Test
  void lifts_of_the_order_keep_to_fifty_pounds_a_person() {
    assertThat(order("everything-at-once"))
        .contains("Nobody holds more than 50 lb alone")
        .contains("Working alone: Not a one-person job: a post weighs")
        .contains("enough people that nobody lifts over 50 lb")
        .doesNotContain("Three people or more");
    // Soil is piled for backfill where backfill is soil.
    assertThat(order("same-place", "--set", "base=" + PLAIN))
        .contains("at least 2'-0\" back from the hole");
  }

  @Test
  void the_warning_of_wet_concrete_stands_with_the_step_that_pours_it() {
    assertThat(order("stone-terrace"))
        .containsPattern("Fill the holes with concrete.*before the concrete stiffens.*Wet concrete")
        .containsOnlyOnce("Wet concrete");
    assertThat(order("mower-lane", "--set", "preferences.footing=concrete"))
        .containsPattern("Fill with concrete, rod it, [^:]*Safety: Wet concrete")
        .containsOnlyOnce("Wet concrete");
  }

  private static String order(String site, String... more) {
    List<String> args =
        new ArrayList<>(List.of("propose", "scenarios/" + site + ".yaml", "--list", "order"));
    args.addAll(List.of(more));
    return said(args.toArray(String[]::new));
  }

  private static String said(String... args) {
    return Run.of(args).out().replaceAll("\\s+", " ");
  }
}

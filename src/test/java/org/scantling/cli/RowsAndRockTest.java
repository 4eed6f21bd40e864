package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Rows at two heights, and solid rock under the holes, from file to printed answer. */
class RowsAndRockTest {
  private static final String SITES = "src/test/resources/rulecases/sites/";

  private static JsonNode proposed(String site, String... settings) {
    String[] asked = new String[4 + 2 * settings.length];
    asked[0] = "propose";
    asked[1] = site;
    asked[2] = "--format";
    asked[3] = "json";
    for (int i = 0; i < settings.length; i++) {
      asked[4 + 2 * i] = "--set";
      asked[5 + 2 * i] = settings[i];
    }
    return JsonMapper.shared().readTree(Run.of(asked).endedWith(0).out());
  }

  private static double footing(JsonNode proposal, String key) {
    return proposal.path("footings").path(key).asDouble();
  }

  @Test
  void brackets_give_way_where_one_row_stands_lower() {
    JsonNode apart = proposed(SITES + "one-row-on-the-bank.yaml");
    assertThat(apart.path("footings").path("kind").asString()).isEqualTo("moment-base");
    assertThat(apart.path("layout").path("fallAcrossIn").asDouble()).isEqualTo(6);
    JsonNode level = proposed(SITES + "one-row-on-the-bank.yaml", "site.cross-slope=level");
    assertThat(level.path("footings").path("kind").asString()).isEqualTo("bracket");
    assertThat(level.path("layout").has("fallAcrossIn")).isFalse();
  }

  @Test
  void a_design_on_brackets_is_none_for_rows_at_two_heights() {
    Run run =
        Run.of(
            "check",
            "scenarios/stone-terrace.yaml",
            "--design",
            "scenarios/base/kiwi-court.yaml",
            "--set",
            "site.cross-slope=5 %");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out().replaceAll("\\s+", " ")).contains("posts of two heights");
  }

  @Test
  void the_second_row_may_stand_higher_as_well() {
    JsonNode lower = proposed("scenarios/creek-bank.yaml", "site.cross-slope=8 in");
    JsonNode higher = proposed("scenarios/creek-bank.yaml", "site.cross-slope=-8 in");
    assertThat(higher.path("layout").path("fallAcrossIn").asDouble()).isEqualTo(-8);
    assertThat(higher.path("layout").path("headroomIn"))
        .isEqualTo(lower.path("layout").path("headroomIn"));
    assertThat(higher.path("checks")).isEqualTo(lower.path("checks"));
  }

  /**
   * Collars 22 in wide stand too close for the doubled value of the soil (50 1/2 in apart, three
   * times 22 in is 66 in): a narrower collar that might have it is not dug.
   */
  @Test
  void holes_on_rock_are_worked_as_wide_as_they_are_dug() {
    JsonNode proposal = proposed(SITES + "collars-over-rock.yaml");
    for (JsonNode check : proposal.path("checks")) {
      assertThat(check.path("ratio").asDouble())
          .as(check.path("id").asString())
          .isLessThanOrEqualTo(1 + 1e-9);
    }
    assertThat(footing(proposal, "depthIn")).isEqualTo(25);
    assertThat(footing(proposal, "diameterIn")).isGreaterThan(22);
  }

  @Test
  void a_hole_that_fits_ends_above_the_rock_with_its_bed() {
    JsonNode above = proposed(SITES + "rock-far-down.yaml");
    assertThat(above.path("footings").has("onRock")).isFalse();
    assertThat(footing(above, "depthIn")).isBetween(30.0, 60.0 - 6);
  }

  @Test
  void a_hole_that_does_not_fit_stops_on_the_rock_in_concrete() {
    JsonNode onRock = proposed("scenarios/ledge-walk.yaml");
    assertThat(onRock.path("footings").path("onRock").asBoolean()).isTrue();
    assertThat(footing(onRock, "depthIn")).isEqualTo(44);
    assertThat(onRock.path("footings").path("backfill").asString()).isEqualTo("concrete");
  }

  @Test
  void where_the_ground_over_the_rock_holds_no_post_it_stands_on_a_bracket() {
    JsonNode thin = proposed(SITES + "on-a-thin-skin.yaml");
    assertThat(thin.path("footings").path("kind").asString()).isEqualTo("bracket");
    assertThat(footing(thin, "depthIn")).isLessThanOrEqualTo(24);
  }

  @Test
  void rock_that_leaves_no_hold_at_all_is_a_case_for_an_engineer() {
    Run run = Run.of("propose", "scenarios/ledge-walk.yaml", "--set", "site.rock-at=8 in");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("No hole depth works; what weighs most is the solid rock below (site.rock-at).")
        .contains("probe again");
  }
}

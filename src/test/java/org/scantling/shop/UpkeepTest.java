package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.StepRow;

/** The yearly sheet says what this structure needs, and nothing that it has not. */
class UpkeepTest {
  private static Upkeep of(Built built) {
    return Lists.of(built).upkeep(UnitSystem.IMPERIAL);
  }

  private static String text(Built built) {
    return of(built).care().stream().map(Upkeep.Care::text).collect(Collectors.joining("\n"));
  }

  @Test
  void posts_in_the_ground_are_probed_and_metal_feet_are_looked_at() {
    assertThat(text(Jobs.scenario("mower-lane")))
        .contains("push a screwdriver", "The gravel around the posts settles")
        .contains("leans more than 1/2\" in 4'-0\"")
        .doesNotContain("metal foot", "comes out of its concrete", "post base");
    assertThat(text(Jobs.scenario("stone-terrace")))
        .contains("Look at every metal foot", "Pull at every knee brace")
        .doesNotContain("push a screwdriver", "around the posts settles");
  }

  @Test
  void only_bolts_that_are_there_are_tightened() {
    assertThat(text(Jobs.scenario("mower-lane"))).contains("tighten every bolt");
    assertThat(text(Jobs.wish("same-place", "preferences.header=on-top")))
        .satisfiesAnyOf(
            none -> assertThat(none).doesNotContain("tighten every bolt"),
            lagged -> assertThat(lagged).contains("lag screw"));
  }

  @Test
  void without_a_climber_nobody_is_told_to_cut_one_back() {
    assertThat(text(Jobs.scenario("mower-lane"))).contains("Cut the climber back");
    assertThat(text(Jobs.wish("mower-lane", "planting[0].vine=none")))
        .doesNotContain("climber back", "Tighten the wires", "Take every stem");
  }

  @Test
  void a_top_says_the_snow_and_the_climber_that_it_was_worked_out_for() {
    assertThat(text(Jobs.wish("mower-lane", "site.climate.ground-snow=20 psf")))
        .contains("snow on the ground that weighs 20 lb on each square foot")
        .contains("a climber that weighs 4 lb on each square foot");
  }

  static Stream<String> jobs() {
    return Stream.of("bean-row", "stone-terrace", "metric-country", "everything-at-once");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void the_seasons_stand_in_the_order_of_a_year_and_each_care_once(String job) {
    List<Upkeep.Care> care = of(Jobs.scenario(job)).care();

    assertThat(care).extracting(Upkeep.Care::text).doesNotHaveDuplicates();
    assertThat(care)
        .extracting(each -> StepRow.UPKEEP.indexOf(each.season()))
        .isSorted()
        .doesNotContain(-1);
    assertThat(care).extracting(Upkeep.Care::season).contains("first-year", "after-storm");
  }

  /** The order of work ends with the planting. */
  @Test
  void the_order_of_work_has_none_of_it() {
    assertThat(Lists.of(Jobs.scenario("bean-row")).order(UnitSystem.IMPERIAL).steps())
        .extracting(WorkOrder.Step::part)
        .doesNotContainAnyElementsOf(StepRow.UPKEEP);
  }
}

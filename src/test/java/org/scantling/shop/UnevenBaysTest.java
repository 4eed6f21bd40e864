package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Walks whose bays are told one by one, by plain measuring; no source. */
class UnevenBaysTest {
  /** The pieces of each job fit together, as those of walks of equal bays have to. */
  @Test
  void pieces_and_set_out_fit_on_a_slope_in_steps_and_on_brackets() {
    for (String slope : List.of("0 %", "4 %", "9 %")) {
      for (String name : List.of("past-the-pipe", "long-walk", "stone-terrace", "bean-row")) {
        Built built =
            Jobs.wish(
                name,
                "walkway.length=19 ft",
                "walkway.bays=[6 ft, 7 ft, 6 ft]",
                "site.climate.wind-speed=95 mph",
                "site.slope=" + slope);

        assertThat(built.geometry().plan().along().lengthsIn()).containsExactly(72.0, 84.0, 72.0);
        new Fitting(built).check();
        StakingPropertyTest.check(built);
      }
    }
  }

  /**
   * By hand: over bays of 7 ft and 5 ft the ground falls 9 in 100: 7.56 in, which is 7 9/16, and
   * 5.4 in, which is 5 3/8. The step at a post is the fall along the bay after it.
   */
  @Test
  void each_step_is_as_high_as_the_ground_falls_along_its_bay() {
    Built built =
        Jobs.wish(
            "long-walk",
            "walkway.length=17 ft",
            "walkway.bays=[5 ft, 7 ft, 5 ft]",
            "site.slope=9 %");

    assertThat(built.paired()).isTrue();
    assertThat(Jobs.page(built, ListKind.SET_OUT))
        .contains(
            "A2, B2: boards meet at the middle of the post, the lower ones below: their top edges"
                + " below the top of the post 7 9/16\"",
            "A3, B3: boards meet at the middle of the post, the lower ones below: their top edges"
                + " below the top of the post 5 3/8\"");
    assertThat(Jobs.page(built, ListKind.ORDER)).contains("step down 5 3/8\" or 7 9/16\"");
  }

  /** By Pythagoras on rows 8 ft apart: 5 ft gives 9'-5 3/16", 7 ft gives 10'-7 9/16". */
  @Test
  void every_bay_has_a_diagonal_and_every_length_of_bay_a_spacer() {
    Built built = Jobs.wish("long-walk", "walkway.length=17 ft", "walkway.bays=[5 ft, 7 ft, 5 ft]");

    assertThat(built.geometry().plan().rowSpacingIn()).isEqualTo(96);
    assertThat(Jobs.page(built, ListKind.SET_OUT))
        .contains(
            "One bay: A1 to B2 and the other way, 9'-5 3/16\"",
            "One bay: A2 to B3 and the other way, 10'-7 9/16\"",
            "One bay: A3 to B4 and the other way, 9'-5 3/16\"")
        .doesNotContain("Every bay");
    assertThat(Jobs.page(built, ListKind.ORDER)).contains("4'-6 1/2\" or 6'-6 1/2\" clear");
  }
}

package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.loads.OpenTopSnow.Branch;

class OpenTopSnowTest {
  private static final FlatRoofSnow ROOF = FlatRoofSnow.of(20, new SnowFactors(1, 1 / 0.7, 1));
  private static final SnowShareRule RULE = new SnowShareRule(0.5, 6, false);

  @Test
  void thin_crossbeams_far_apart_carry_the_minimum_share() {
    OpenTopSnow snow = OpenTopSnow.on(ROOF, new OpenTop(1.5, 16, 0), RULE);
    assertThat(snow.branch()).isEqualTo(Branch.MINIMUM_SHARE);
    assertThat(snow.shareRatio()).isCloseTo(0.5, within(1e-12));
    assertThat(snow.snowPsf()).isCloseTo(10, within(1e-9));
  }

  @Test
  void vines_raise_the_covered_share() {
    OpenTopSnow snow = OpenTopSnow.on(ROOF, new OpenTop(1.5, 12, 0.5), RULE);
    assertThat(snow.branch()).isEqualTo(Branch.COVERED_SHARE);
    assertThat(snow.shareRatio()).isCloseTo(0.5625, within(1e-12));
    assertThat(snow.snowPsf()).isCloseTo(11.25, within(1e-9));
  }

  @Test
  void a_covered_share_of_exactly_the_minimum_is_the_covered_share() {
    OpenTopSnow snow = OpenTopSnow.on(ROOF, new OpenTop(8, 16, 0), RULE);
    assertThat(snow.branch()).isEqualTo(Branch.COVERED_SHARE);
    assertThat(snow.shareRatio()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void gaps_up_to_the_bridging_gap_carry_all_the_snow() {
    assertThat(OpenTopSnow.on(ROOF, new OpenTop(1.5, 7.5, 0), RULE).branch())
        .isEqualTo(Branch.GAPS_BRIDGED);
    assertThat(OpenTopSnow.on(ROOF, new OpenTop(1.5, 7.5, 0), RULE).snowPsf())
        .isCloseTo(20, within(1e-9));
    assertThat(OpenTopSnow.on(ROOF, new OpenTop(1.5, 7.6, 0), RULE).branch())
        .isEqualTo(Branch.MINIMUM_SHARE);
  }

  @Test
  void full_snow_can_be_asked_for() {
    SnowShareRule full = new SnowShareRule(0.5, 6, true);
    OpenTopSnow snow = OpenTopSnow.on(ROOF, new OpenTop(1.5, 48, 0), full);
    assertThat(snow.branch()).isEqualTo(Branch.FULL_ASKED_FOR);
    assertThat(snow.snowPsf()).isCloseTo(20, within(1e-9));
  }

  @Test
  void it_refuses_a_top_that_cannot_be_built() {
    assertThatThrownBy(() -> new OpenTop(3.5, 2, 0))
        .hasMessage(
            "crossbeam breadth (in) 3.5 must be not more than the crossbeam spacing (in) 2.0");
    assertThatThrownBy(() -> new OpenTop(1.5, 16, 1.2))
        .hasMessage("foliage fill 1.2 must be between 0 and 1");
    assertThatThrownBy(() -> new SnowShareRule(-0.1, 6, false))
        .hasMessage("minimum snow share -0.1 must be between 0 and 1");
  }
}

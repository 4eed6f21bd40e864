package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class LoadEffectsTest {
  private static final Offset<Double> CLOSE = within(1e-9);
  private static final LoadEffects LIFTED = new LoadEffects(100, 30, 50, 80, -250);

  @Test
  void vines_count_where_they_add() {
    CombinedEffect snow = LIFTED.worst(LoadCombination.DEAD_SNOW);
    assertThat(snow.effect()).isCloseTo(210, CLOSE);
    assertThat(snow.vinesCounted()).isTrue();
    assertThat(LIFTED.worst(LoadCombination.DEAD_LIVE).effect()).isCloseTo(180, CLOSE);
  }

  @Test
  void vines_are_left_out_where_they_would_hold_the_post_down() {
    CombinedEffect lift = LIFTED.worst(LoadCombination.UPLIFT);
    assertThat(lift.effect()).isCloseTo(-90, CLOSE);
    assertThat(lift.vinesCounted()).isFalse();
    assertThat(LIFTED.lowest(LoadCombination.UPLIFT)).isEqualTo(lift);
    assertThat(LIFTED.highest(LoadCombination.UPLIFT).effect()).isCloseTo(-72, CLOSE);
  }

  @Test
  void vines_that_pull_the_other_way_are_counted_at_the_low_end() {
    LoadEffects effects = new LoadEffects(100, -30, 0, 0, -250);
    assertThat(effects.lowest(LoadCombination.UPLIFT).effect()).isCloseTo(-108, CLOSE);
    assertThat(effects.lowest(LoadCombination.UPLIFT).vinesCounted()).isTrue();
    assertThat(effects.highest(LoadCombination.DEAD_ALONE).effect()).isCloseTo(100, CLOSE);
  }

  @Test
  void the_wind_can_be_turned_round() {
    LoadEffects pressed = LIFTED.withWindReversed();
    assertThat(pressed.worst(LoadCombination.DEAD_WIND).effect()).isCloseTo(280, CLOSE);
    assertThat(pressed.worst(LoadCombination.DEAD_WIND_LIVE).effect())
        .isCloseTo(130 + 0.45 * 250 + 0.75 * 50, CLOSE);
    assertThat(pressed.worst(LoadCombination.DEAD_WIND_SNOW).effect())
        .isCloseTo(130 + 0.45 * 250 + 0.75 * 80, CLOSE);
  }

  @Test
  void every_combination_is_answered_in_order() {
    assertThat(LIFTED.worstOfEach())
        .extracting(CombinedEffect::combination)
        .containsExactly(LoadCombination.values());
  }

  @Test
  void it_refuses_an_effect_that_is_no_number() {
    assertThatThrownBy(() -> new LoadEffects(1, 1, 1, Double.NaN, 1))
        .hasMessage("snow effect NaN must be finite");
  }
}

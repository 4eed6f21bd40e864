package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SharedPushTest {
  @Test
  void the_shorter_of_two_posts_takes_the_share_of_the_stiffer() {
    SidePush taller = new SidePush(100, 0, 100);
    SharedPush shared = SharedPush.of(taller, new SidePush(100, 0, 80));
    // 100^3/(80^3 + 100^3) = 0.66138 of 200 lb, 100 lb of which are its own.
    assertThat(shared.overLb()).isCloseTo(32.275, within(0.001));
    assertThat(shared.push().topLb()).isCloseTo(132.275, within(0.001));
    assertThat(shared.push().momentAtInLb(0)).isCloseTo(10582.0, within(0.1));
  }

  @Test
  void what_is_spread_over_a_post_counts_three_eighths_at_its_top() {
    SharedPush shared = SharedPush.of(new SidePush(0, 200, 100), new SidePush(0, 160, 80));
    // 0.66138 x 3/8 x 360 - 3/8 x 160.
    assertThat(shared.overLb()).isCloseTo(29.2857, within(0.001));
    assertThat(shared.push().spreadLb()).isEqualTo(160);
  }

  @Test
  void posts_of_one_height_take_nothing_over() {
    SidePush push = new SidePush(90, 96, 40, 90);
    SharedPush shared = SharedPush.of(push, push);
    assertThat(shared.overLb()).isCloseTo(0, within(1e-9));
    assertThat(shared.push().momentAtInLb(0)).isCloseTo(push.momentAtInLb(0), within(1e-6));
  }

  @Property(tries = 200)
  void both_tops_move_as_far_where_the_taller_is_eased_by_what_the_shorter_takes(
      @ForAll @DoubleRange(min = 10, max = 400) double topLb,
      @ForAll @DoubleRange(min = 0, max = 400) double spreadLb,
      @ForAll @DoubleRange(min = 60, max = 96) double shortIn,
      @ForAll @DoubleRange(min = 1, max = 24) double dropIn) {
    double tallIn = shortIn + dropIn;
    SidePush taller = new SidePush(topLb, tallIn + 4, spreadLb, tallIn);
    SidePush own = new SidePush(topLb, shortIn + 4, spreadLb * shortIn / tallIn, shortIn);
    SharedPush shared = SharedPush.of(taller, own);
    double easedIn = taller.swayIn(1) - shared.overLb() * tallIn * tallIn * tallIn / 3;
    assertThat(shared.push().swayIn(1)).isCloseTo(easedIn, within(1e-6 * easedIn));
    assertThat(shared.overLb()).isPositive();
  }
}

package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Where a crossbeam does not lie where its spacing would have it, the set-out says where and why.
 */
class ShiftedCrossbeamsTest {
  private static List<SetOut.Spot> spots(Built built) {
    return new Spots(built).all();
  }

  /** By hand: a post of 3 1/2 and a crossbeam of 1 1/2, flush: half of the difference, 1 in. */
  @Test
  void a_crossbeam_that_stands_flush_with_a_post_is_told_with_its_reason() {
    assertThat(spots(Jobs.scenario("stone-terrace")))
        .filteredOn(each -> each.what().contains("the crossbeam"))
        .singleElement()
        .satisfies(
            spot -> {
              assertThat(spot.posts()).isEqualTo("A1, B1, A2, B2");
              assertThat(spot.what())
                  .contains("not stand over the middle of the post but flush with its side")
                  .endsWith("so that the brace across the walk lies flat on both");
              assertThat(spot.measures())
                  .containsExactly(new SetOut.Named("its center from the center of the post", 1));
            });
  }

  /** The boards of the lower bay begin at the middle of the post, so half of it is the upper's. */
  @Test
  void a_crossbeam_at_a_step_is_told_to_lie_on_the_upper_boards() {
    assertThat(spots(Jobs.wish("windy-hill", "site.slope=12 %")))
        .filteredOn(each -> each.what().contains("the crossbeam"))
        .isNotEmpty()
        .allMatch(each -> each.what().endsWith("so that it lies on the upper boards alone"));
  }
}

package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.scantling.tables.Yard;

/** What a length that was changed for the yard's sake spares, in timber and in the yard's money. */
class SavingsTest {
  private static Yard.Offer offer(String size, double lengthIn) {
    return new Yard.Offer(size, lengthIn, OptionalLong.empty());
  }

  private static Yard.Offer offer(String size, double lengthIn, long cents) {
    return new Yard.Offer(size, lengthIn, OptionalLong.of(cents));
  }

  private static Yard yard(Yard.Offer... offers) {
    return new Yard("yard.csv", Arrays.asList(offers));
  }

  private static Buying buying(Built built) {
    Pieces pieces = Pieces.of(built);
    return new Purchase(built, pieces, new Planting(built).climbers()).buying();
  }

  private static double spareIn(Built built) {
    return Pieces.of(built).of("post").get(0).shape().spareIn();
  }

  /**
   * Posts of 129, 47 of them in the ground since their feet are counted as turning and the leafy
   * edge of the top as catching wind. With 12 of spare they take 144; with 7 they come out of 136,
   * and 6 is the least. Ten posts and one stick to spare: 11 x 8.
   */
  @Test
  void less_is_left_on_posts_where_that_spares_a_longer_stick() {
    Built built = Jobs.scenario("mower-lane", yard(offer("4x4", 136), offer("4x4", 144)));

    assertThat(spareIn(built)).isEqualTo(7);
    assertThat(buying(built).savings())
        .containsExactly(
            new Saving(
                "posts, before their tops are cut",
                "4x4",
                141,
                136,
                11 * 8,
                false,
                OptionalLong.empty()));
  }

  /** 134 leaves no more than 5 on a post of 129. */
  @Test
  void never_less_than_the_least_is_left_on_a_post() {
    Built built = Jobs.scenario("mower-lane", yard(offer("4x4", 134), offer("4x4", 144)));

    assertThat(spareIn(built)).isEqualTo(12);
    assertThat(buying(built).savings()).isEmpty();
  }

  @Test
  void the_usual_is_left_on_where_less_spares_nothing() {
    assertThat(spareIn(Jobs.scenario("mower-lane"))).isEqualTo(12);
  }

  /**
   * 27 crossbeams were wanted 3/8 over 96. In a yard with 96 and 120 alone each would take a stick
   * of 120, and the three to spare with them: 30 x 24 = 720 more, and 30 x 3.00 = 90.00 more to
   * pay.
   */
  @Test
  void a_shorter_overhang_spares_length_and_money() {
    Built built = Jobs.scenario("step-free", yard(offer("2x6", 96, 1000), offer("2x6", 120, 1300)));

    Saving saving = only(buying(built).savings());
    assertThat(saving.what()).isEqualTo("crossbeams");
    assertThat(saving.toIn()).isEqualTo(96);
    assertThat(saving.fromIn()).isBetween(96.25, 96.5);
    assertThat(saving.lengthIn()).isEqualTo(720);
    assertThat(saving.cents()).hasValue(9000);
  }

  @Test
  void what_was_not_changed_spares_nothing() {
    assertThat(buying(Jobs.scenario("same-place")).savings()).isEmpty();
  }

  private static Saving only(List<Saving> savings) {
    assertThat(savings).hasSize(1);
    return savings.get(0);
  }
}

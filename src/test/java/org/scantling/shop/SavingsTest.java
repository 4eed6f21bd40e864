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
   * Posts of 147 1/4, 94 1/4 of them up to the tops of the boards and 53 in the ground. With 12 of
   * spare they are 159 1/4 and take 168; with 8 3/4 they come out of 156, and 6 is the least. Six
   * posts and one stick to spare: 7 x 12.
   */
  @Test
  void less_is_left_on_posts_where_that_spares_a_longer_stick() {
    Built built = Jobs.scenario("windy-hill", yard(offer("6x6", 156), offer("6x6", 168)));

    assertThat(spareIn(built)).isEqualTo(8.75);
    assertThat(buying(built).savings())
        .containsExactly(
            new Saving(
                "posts, before their tops are cut",
                "6x6",
                159.25,
                156,
                7 * 12,
                false,
                OptionalLong.empty()));
  }

  /** 153 leaves no more than 5 3/4 on a post of 147 1/4. */
  @Test
  void never_less_than_the_least_is_left_on_a_post() {
    Built built = Jobs.scenario("windy-hill", yard(offer("6x6", 153), offer("6x6", 168)));

    assertThat(spareIn(built)).isEqualTo(12);
    assertThat(buying(built).savings()).isEmpty();
  }

  @Test
  void the_usual_is_left_on_where_less_spares_nothing() {
    assertThat(spareIn(Jobs.scenario("windy-hill"))).isEqualTo(12);
  }

  /**
   * Rows 60 + 5 1/2 = 65 1/2 apart want tails of 13 / 54 of that, 15.77. Outside the posts lie
   * boards of 1 1/2, so a crossbeam is wanted 65 1/2 + 5 1/2 + 3 + 31 1/2 = 105 1/2 long. In a yard
   * with 102 and 120 alone each of 25 would take a stick of 120, and the three to spare with them:
   * 28 x 18 = 504 more, and 28 x 3.00 = 84.00 more to pay.
   */
  @Test
  void a_shorter_overhang_spares_length_and_money() {
    Built built =
        Jobs.scenario("step-free", yard(offer("2x6", 102, 1000), offer("2x6", 120, 1300)));

    Saving saving = only(buying(built).savings());
    assertThat(saving.what()).isEqualTo("crossbeams");
    assertThat(saving.toIn()).isEqualTo(102);
    assertThat(saving.fromIn()).isBetween(105.5, 105.5625);
    assertThat(saving.lengthIn()).isEqualTo(504);
    assertThat(saving.cents()).hasValue(8400);
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

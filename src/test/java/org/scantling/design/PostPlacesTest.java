package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Places of posts around stretches that have to stay free; statics of nothing but lengths. */
class PostPlacesTest {
  private static FreeStretch from(double fromIn, double toIn) {
    return new FreeStretch(fromIn, toIn);
  }

  @Test
  void posts_stand_evenly_where_nothing_is_in_the_way() {
    assertThat(PostPlaces.of(4, 240, List.of()).lengthsIn())
        .containsExactly(60.0, 60.0, 60.0, 60.0);
    assertThat(PostPlaces.of(4, 240, List.of(from(70, 100))).even()).isTrue();
  }

  /** Posts at 60, 120, 180; the one at 120 may not stand from 100 to 130: 10 in on is nearer. */
  @Test
  void a_post_moves_to_the_nearer_end_and_the_others_share_what_it_moved() {
    Bays bays = PostPlaces.of(4, 240, List.of(from(100, 130)));
    assertThat(bays.lengthsIn()).containsExactly(65.0, 65.0, 55.0, 55.0);
  }

  @Test
  void a_post_may_stand_right_at_either_end_of_a_stretch() {
    assertThat(PostPlaces.of(4, 240, List.of(from(60, 90), from(150, 180))).even()).isTrue();
  }

  /** Neither 80 nor 160 is free; the middle may only be crossed from 70 to 170. */
  @Test
  void a_stretch_longer_than_a_bay_is_crossed_by_one_long_bay() {
    Bays bays = PostPlaces.of(3, 240, List.of(from(70, 170)));
    assertThat(bays.lengthsIn()).containsExactly(70.0, 100.0, 70.0);
  }

  @Test
  void one_bay_crosses_whatever_there_is() {
    assertThat(PostPlaces.of(1, 240, List.of(from(70, 170))).lengthsIn()).containsExactly(240.0);
  }

  /** Held against an other way: how far a walker comes who may step that far and no farther. */
  @Property
  void the_longest_bay_is_as_short_as_it_can_be(
      @ForAll @IntRange(min = 1, max = 9) int bays,
      @ForAll @Size(max = 4) List<@DoubleRange(min = 0, max = 230) Double> starts,
      @ForAll @DoubleRange(min = 1, max = 60) double longIn) {
    List<FreeStretch> free = new ArrayList<>();
    double lastIn = 0;
    for (double start : starts.stream().sorted(Comparator.naturalOrder()).toList()) {
      double toIn = Math.min(240, start + longIn);
      if (start >= lastIn) {
        free.add(from(start, toIn));
        lastIn = toIn;
      }
    }
    Bays found = PostPlaces.of(bays, 240, free);
    assertThat(found.count()).isEqualTo(bays);
    assertThat(found.overallIn()).isCloseTo(240, within(1e-9));
    assertThat(PostPlaces.keepsFree(found, free)).isTrue();
    assertThat(found.longestIn()).isCloseTo(shortestStepIn(bays, free), within(1e-6));
  }

  private static double shortestStepIn(int bays, List<FreeStretch> free) {
    double lowIn = 0;
    double highIn = 240;
    while (highIn - lowIn > 1e-9) {
      double stepIn = (lowIn + highIn) / 2;
      if (arrives(bays, stepIn, free)) {
        highIn = stepIn;
      } else {
        lowIn = stepIn;
      }
    }
    return highIn;
  }

  private static boolean arrives(int bays, double stepIn, List<FreeStretch> free) {
    double atIn = 0;
    for (int bay = 0; bay < bays; bay++) {
      double nextIn = atIn + stepIn;
      if (nextIn >= 240) {
        return true;
      }
      for (FreeStretch stretch : free) {
        if (stretch.fromIn() < nextIn && nextIn < stretch.toIn()) {
          nextIn = stretch.fromIn();
        }
      }
      if (nextIn <= atIn) {
        return false;
      }
      atIn = nextIn;
    }
    return false;
  }
}

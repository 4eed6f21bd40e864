package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;

/**
 * The gate on the flagstones with two crossbeams at each pair of posts: one bay of 40 in on 4x4
 * posts, five places 10 in apart, two of them over posts, 2x6 6'-11 1/2" long.
 */
class DoubledCrossbeamsListTest {
  private static final Built GATE =
      Jobs.wish("stone-terrace", "preferences.crossbeams-at-posts=doubled", "walkway.length=40 in");

  @Test
  void every_piece_of_it_finds_its_place() {
    new Fitting(GATE).check();
  }

  @Test
  void both_of_each_pair_are_cut() {
    assertThat(Pieces.of(GATE).count("crossbeam")).isEqualTo(5 + 2);
  }

  /**
   * By hand: posts of 3 1/2 at 0 and 40, both flush with the side of the post toward the last one:
   * the outer one reaches to 1 3/4, its near face is at 1/4, that of the inner one at -1 1/4.
   */
  @Test
  void the_two_lie_against_each_other_the_outer_one_flush_with_the_post() {
    List<Crossbeams.Lying> lying = new Crossbeams(GATE).lying();
    assertThat(lying).extracting(Crossbeams.Lying::plies).containsExactly(2, 1, 1, 1, 2);
    Crossbeams.Lying first = lying.get(0);
    assertThat(first.breadthIn()).isEqualTo(3.0);
    assertThat(first.alongIn() + first.breadthIn() / 2).isCloseTo(1.75, within(1e-9));
    Crossbeams.Lying last = lying.get(4);
    assertThat(last.alongIn() + last.breadthIn() / 2).isCloseTo(40 + 1.75, within(1e-9));
  }

  @Test
  void the_set_out_gives_the_near_face_of_the_first_of_two() {
    SetOut setOut = new SettingOut(GATE, Pieces.of(GATE)).setOut();
    assertThat(setOut.running())
        .filteredOn(each -> each.what().contains("of the two side by side"))
        .singleElement()
        .satisfies(
            each ->
                assertThat(each.atIn().get(0))
                    .as("from the end of the header")
                    .isCloseTo(GATE.geometry().headerTailIn() - 1.25, within(1.0 / 32)));
    assertThat(setOut.spots())
        .anySatisfy(
            each ->
                assertThat(each.what())
                    .contains("two crossbeams side by side do not stand over the middle"));
  }

  /**
   * 83 1/2 in: 16 in apart six spaces, seven nails along each edge, 14 a pair; 10d nails of 3 in go
   * through just 2 x 1 1/2 in. The heads of the two braces at each pair of posts have bolts through
   * 3 1/2 + 3 in and one more for the nut, 8 in; they would be 6 in through one crossbeam.
   */
  @Test
  void nails_for_the_pairs_and_longer_bolts_for_the_braces_are_bought() {
    List<Fixing> fixings = Fixings.of(GATE, Pieces.of(GATE));
    assertThat(fixings)
        .filteredOn(each -> each.use().contains("crossbeams side by side at the posts"))
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.id()).isEqualTo("nail.common.10d");
              assertThat(each.count()).isEqualTo(2 * 14);
            });
    assertThat(fixings)
        .filteredOn(each -> each.use().contains("heads of braces across the walk"))
        .singleElement()
        .satisfies(each -> assertThat(each.id()).endsWith(".8"));
  }

  /** Held like one on its outer faces: five places, two headers. */
  @Test
  void two_side_by_side_are_held_to_the_headers_like_one() {
    double each = GATE.joint(org.scantling.reasons.Question.CROSSBEAM_JOINT).count();
    assertThat(Fixings.of(GATE, Pieces.of(GATE)))
        .filteredOn(fixing -> fixing.use().contains("crossbeams to headers"))
        .singleElement()
        .satisfies(fixing -> assertThat(fixing.count()).isEqualTo((int) (each * 2 * 5)));
  }

  @Test
  void the_order_of_work_sets_one_and_then_the_other_and_nails_them() {
    assertThat(Occasions.of(GATE, Pieces.of(GATE), Lists.of(GATE).climbers()))
        .contains("crossbeam=pairs", "crossbeam=nailed-pairs")
        .doesNotContain("crossbeam=one-each", "crossbeam=bolted-pairs");
  }

  /** The order told of five where seven are cut. */
  @Test
  void the_order_of_work_counts_the_timbers_and_their_places() {
    assertThat(Lists.of(GATE).order(UnitSystem.IMPERIAL).steps())
        .extracting(WorkOrder.Step::text)
        .anyMatch(text -> text.contains("then the others: 7 in 5 places, two side by side"));
  }

  /** 4x6: a nail must reach 3 1/2 + 1 3/4 in, 5 1/4, and the longest, 20d, is 4 in long. */
  @Test
  void two_that_no_nail_reaches_through_are_bolted() {
    Built court = Jobs.wish("heavy-snow", "preferences.crossbeams-at-posts=doubled");
    assertThat(court.geometry().crossbeams().breadthIn()).isEqualTo(3.5);
    assertThat(new Plies(court).nail()).isEmpty();
    assertThat(Occasions.of(court, Pieces.of(court), Lists.of(court).climbers()))
        .contains("crossbeam=bolted-pairs");
  }
}

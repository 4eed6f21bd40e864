package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.tables.TopSpare;
import org.scantling.tables.Yard;

/** What somebody lifts is the piece as it was cut, in the cautions as in the list of lifts. */
class LiftsTest {
  /** Cut lengths are rounded to the tape. */
  private static final double TAPE_LB = 0.25;

  private static double heaviestLb(Built built) {
    Pieces pieces = Pieces.of(built);
    return pieces.all().stream().mapToDouble(piece -> Weights.of(built, piece)).max().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "windy-hill",
        "mower-lane",
        "long-walk",
        "everything-at-once",
        "metric-country",
        "sloping-path",
        "deep-frost"
      })
  void the_caution_weighs_the_heaviest_piece_as_the_lifts_do(String scenario) {
    agree(Jobs.scenario(scenario), Jobs.proposal(scenario));
  }

  /** Posts of 12 ft 3 1/4 in are cut a foot longer, or come whole out of sticks of 12 ft 10 in. */
  @Test
  void a_yard_with_sticks_that_just_hold_the_posts_makes_both_lighter() {
    Yard yard = new Yard("short", List.of(new Yard.Offer("6x6", 154, OptionalLong.empty())));
    Built built = Jobs.scenario("windy-hill", yard);
    assertThat(heaviestLb(built)).isLessThan(heaviestLb(Jobs.scenario("windy-hill")) - 2);
    agree(built, Jobs.proposal("windy-hill", yard));
  }

  private static void agree(Built built, Proposal proposal) {
    double mostLb = built.tables().thumb("lift.one-person").amount();
    List<Reason> heavy =
        proposal.cautions().stream()
            .filter(each -> each.note().id().equals("cautions.lift"))
            .toList();
    assertThat(heavy).hasSize(heaviestLb(built) > mostLb ? 1 : 0);
    heavy.forEach(
        each -> {
          Evidence.Seen weight = each.finding().evidence().find("weight").orElseThrow();
          assertThat(((Evidence.Seen.Amount) weight).measure().amount())
              .isCloseTo(heaviestLb(built), within(TAPE_LB));
        });
  }

  @Test
  void less_is_left_only_where_a_shorter_stick_then_holds_the_post() {
    TopSpare spare = new TopSpare(12, 6);
    assertThat(spare.cutIn(125, List.of(120.0, 132.0, 144.0))).isEqualTo(132);
    assertThat(spare.cutIn(127, List.of(120.0, 132.0, 144.0))).isEqualTo(139);
    assertThat(spare.cutIn(118, List.of(120.0, 132.0, 144.0))).isEqualTo(130);
    assertThat(spare.cutIn(137, List.of(120.0, 132.0, 144.0))).isEqualTo(144);
  }
}

package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Reason;
import org.scantling.tables.TopSpare;

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
    Built built = Jobs.scenario(scenario);
    double mostLb = built.tables().thumb("lift.one-person").amount();
    List<Reason> heavy =
        Jobs.proposal(scenario).cautions().stream()
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

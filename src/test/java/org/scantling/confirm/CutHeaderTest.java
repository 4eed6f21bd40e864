package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.FOUR_BY_FOUR;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.Checked;

/**
 * Three bays L = 42 in with tails of 1.75 in and no crossbeam on them, in pieces of two bays and
 * one; loads as in {@link HeaderChecksTest}.
 *
 * <p>By the theorem of three moments, pulling the top positive, a piece of two bays that ends in a
 * cut: 4 H2 = 3 (F1 + F2) − H1, where F = P L (16 − 1)/48 + w L²/12 with four spaces to a bay.
 *
 * <p>Source: any strength-of-materials text, e.g. Gere, Mechanics of Materials, continuous beams.
 */
class CutHeaderTest {
  private static final Geometry THREE =
      SmallArbour.geometry(3, new Geometry.Headers(false, 3.5, 3.5, 0, 0.5));

  private static HeaderChecks in(String way) {
    return SmallArbour.headers(THREE).inPieces(Splice.of(way));
  }

  private static HeaderChecks.PostLoad on(HeaderChecks headers, LoadCombination combination) {
    return headers.onPosts(FOUR_BY_FOUR).stream()
        .filter(each -> each.combination() == combination)
        .findFirst()
        .orElseThrow();
  }

  /**
   * 0.6D + 0.6W: each crossbeam lifts P = 0.6 · 31.5 − 0.6 · 5.833 = 15.4 lb, w = 0.6 · 0.28356 =
   * 0.17014 lb/in holds down. F = −202.13 + 25.01 = −177.11; H1 = 0.26; H2 = (6 · (−177.11) −
   * 0.26)/4 = −265.74. Post 2: −15.4 + 2 (3.573 − 23.1) + (2 H2 − H1)/42 = −67.11 lb. The uncut run
   * has H2 = H3 = (6 F − H1)/5 = −212.59 and lifts post 2 by 59.52 lb alone.
   */
  @Test
  void the_lift_on_a_post_under_a_cut_header_is_that_of_its_pieces() {
    assertThat(on(in("2+1"), LoadCombination.UPLIFT).upLb()).isCloseTo(67.11, within(0.01));
    assertThat(on(in("3"), LoadCombination.UPLIFT).upLb()).isCloseTo(59.52, within(0.01));
  }

  /**
   * D + S: P = 12.833 + 28 = 40.833 lb on every crossbeam, w = 0.28356. F = 535.94 + 41.68 =
   * 577.62; H1 = 0.43; H2 = (6 · 577.62 − 0.43)/4 = 866.32. Post 2: 40.833 + 2 (5.955 + 61.25) + (2
   * H2 − H1)/42 = 216.49 lb; half of the snow on the bay beyond the cut changes nothing there.
   */
  @Test
  void the_load_on_a_post_under_a_cut_header_is_that_of_its_pieces() {
    assertThat(on(in("2+1"), LoadCombination.DEAD_SNOW).downLb()).isCloseTo(216.49, within(0.01));
  }

  /**
   * The end of the piece of one bay, D + S: 5.955 + 61.25 − 0.43/42 and the crossbeam over the
   * joint, 40.833: 108.03 lb. Lift: 3.573 − 23.1 − 0.26/42 − 15.4 = −34.93 lb.
   */
  @Test
  void the_end_of_a_piece_has_its_own_span_and_all_of_the_crossbeam_over_the_joint() {
    List<HeaderChecks.PostLoad> ends = in("2+1").onCutEnds(FOUR_BY_FOUR);
    assertThat(of(ends, LoadCombination.DEAD_SNOW).downLb()).isCloseTo(108.03, within(0.01));
    assertThat(of(ends, LoadCombination.UPLIFT).upLb()).isCloseTo(34.93, within(0.01));
    assertThat(in("3").onCutEnds(FOUR_BY_FOUR)).isEmpty();
  }

  private static HeaderChecks.PostLoad of(
      List<HeaderChecks.PostLoad> loads, LoadCombination combination) {
    return loads.stream()
        .filter(each -> each.combination() == combination)
        .findFirst()
        .orElseThrow();
  }

  /** 67.35 lb more than half the post would carry as one: R/A on 3.5 by 1.75 in, no C_b. */
  @Test
  void the_end_of_a_piece_bears_on_half_of_its_post() {
    Checked bearing = SmallArbour.byId(in("2+1").of(FOUR_BY_FOUR)).get("header.bearing");
    // A person over the joint, 241.18 lb, beside the piece of one bay under its own load:
    // 12.833 + 5.955 + 19.25 − 0.01 + 241.18 = 279.21 lb on 3.5 · 1.75 in².
    assertThat(bearing.combination()).isEqualTo("D+Lr");
    assertThat(bearing.check().demand()).isCloseTo(279.21 / (3.5 * 1.75), within(0.01));
  }

  @Test
  void the_second_board_of_a_pair_turned_end_for_end_asks_for_nothing_else() {
    Map<String, Double> one = ratios("2+1");
    ratios("1+2")
        .forEach((id, ratio) -> assertThat(ratio).as(id).isCloseTo(one.get(id), within(1e-9)));
    for (LoadCombination combination : LoadCombination.values()) {
      assertThat(on(in("2+1"), combination).upLb())
          .isCloseTo(on(in("1+2"), combination).upLb(), within(1e-9));
    }
  }

  private static Map<String, Double> ratios(String way) {
    return in(way).of(FOUR_BY_FOUR).stream()
        .collect(Collectors.toMap(Checked::id, each -> each.check().ratio()));
  }

  /**
   * A tail of 15 in on a piece of one bay, the bay alone under live load: the end turns by 5 P
   * L²/32 as in {@link HeaderChecksTest}, whatever lies beyond the cut; over the uncut run of three
   * bays the next span holds it back.
   */
  @Test
  void the_tail_of_an_end_piece_sags_as_that_piece_turns() {
    Geometry tails = SmallArbour.geometry(3, new Geometry.Headers(false, 3.5, 3.5, 13.25, 0.5));
    HeaderChecks cut = SmallArbour.headers(tails).inPieces(Splice.bayByBay(3));
    Checked sag = SmallArbour.byId(cut.of(FOUR_BY_FOUR)).get("header.tail-deflection-live");
    assertThat(sag.check().demand()).isGreaterThanOrEqualTo(0.0091837 * (1 - 1e-4));
    Checked uncut =
        SmallArbour.byId(SmallArbour.headers(tails).of(FOUR_BY_FOUR))
            .get("header.tail-deflection-live");
    assertThat(sag.check().demand()).isGreaterThan(1.05 * uncut.check().demand());
  }

  /** Pieces that meet over a post turn there as they like, so one feels nothing of another. */
  @Test
  void pieces_left_out_of_a_long_row_change_nothing() {
    Geometry eleven = SmallArbour.geometry(11, new Geometry.Headers(false, 3.5, 3.5, 13.25, 0.5));
    HeaderLoad each = SmallArbour.headers(eleven).eachCrossbeam();
    HeaderRun longRow = new HeaderRun(eleven, Splice.of("2+2+2+2+2+1"), each);
    HeaderRun shorter = longRow.shortened();
    assertThat(shorter.splice().way()).isEqualTo("2+2+2+1");

    LoadedBeam all = longRow.solved(new SolvedBeams());
    LoadedBeam some = shorter.solved(new SolvedBeams());
    Map<LoadCombination, BeamDemand> fewer = some.demands(0.28);
    all.demands(0.28)
        .forEach(
            (combination, demand) ->
                assertThat(fewer.get(combination))
                    .as("%s", combination)
                    .usingRecursiveComparison()
                    .withComparatorForType(near(1e-6), Double.class)
                    .isEqualTo(demand));
  }

  private static Comparator<Double> near(double ratio) {
    return (one, other) ->
        Math.abs(one - other) <= ratio * Math.max(1, Math.abs(other))
            ? 0
            : Double.compare(one, other);
  }
}

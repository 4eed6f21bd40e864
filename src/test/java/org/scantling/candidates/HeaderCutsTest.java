package org.scantling.candidates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Candidate;

/** Eight bays of 45 in with tails of 13.75 in past the post centres: 387.5 in in all. */
class HeaderCutsTest {
  private static final List<Double> SOLD = List.of(96.0, 120.0, 144.0, 168.0, 192.0);

  private static HeaderCuts cuts(boolean paired, List<Double> sold, String decided) {
    Geometry geometry =
        new Geometry(
            new Geometry.Plan(60, 45, 8),
            new Geometry.Posts(3.5, 82),
            new Geometry.Headers(paired, 3.5, 3.5, 12, 0.5),
            new Geometry.Crossbeams(4, 1.5, 3.5, 10, 0.5, 1.5));
    return new HeaderCuts(level(geometry), sold, decided);
  }

  private static TopLine level(Geometry geometry) {
    return new TopLine(geometry, WayOfBuilding.LEVEL, 0, 0);
  }

  @Test
  void a_header_that_is_sold_whole_is_not_cut() {
    HeaderCuts whole = cuts(false, List.of(387.5), "");
    assertThat(whole.needed()).isFalse();
    assertThat(whole.splice().bays()).containsExactly(8);
    assertThat(cuts(false, List.of(387.4), "").needed()).isTrue();
  }

  @Test
  void the_fewest_pieces_that_the_yard_sells_each_cut_at_the_centre_of_a_post() {
    // Three at least: 387.5 / 192. An end of four bays is 193.75, too long; a middle of four is
    // 180.
    assertThat(cuts(false, SOLD, "").ways())
        .extracting(Candidate.Cut::option)
        .containsExactly("8", "3+4+1", "2+4+2", "3+3+2", "3+2+3");
  }

  @Test
  void what_is_bought_is_the_shortest_length_that_holds_each_piece() {
    Candidate.Cut last = cuts(false, SOLD, "").ways().get(4);
    // 148.75 from 168, 90 from 96, 148.75 from 168
    assertThat(last.boughtIn()).isEqualTo(432, within(1e-9));
    assertThat(last.longestIn()).isEqualTo(148.75, within(1e-9));
    assertThat(last.pieceCount()).isEqualTo(3);
    assertThat(last.sharedCount()).isZero();
  }

  @Test
  void a_pair_of_boards_counts_the_posts_over_which_both_would_be_cut() {
    assertThat(cuts(true, SOLD, "").ways())
        .extracting(Candidate.Cut::sharedCount)
        // 2+4+2 turned round is itself; 3+3+2 is cut at 3 and 6, turned round at 2 and 5
        .containsExactly(0, 0, 2, 0, 2);
  }

  @Test
  void the_longest_piece_follows_the_way_that_was_chosen() {
    assertThat(cuts(false, SOLD, "2+4+2").splice().bays()).containsExactly(2, 4, 2);
  }

  @Test
  void one_bay_cannot_be_cut_over_a_post() {
    Geometry one =
        new Geometry(
            new Geometry.Plan(60, 144, 1),
            new Geometry.Posts(3.5, 82),
            new Geometry.Headers(false, 3.5, 3.5, 24, 0.5),
            new Geometry.Crossbeams(6, 1.5, 3.5, 10, 0.5, 1.5));
    assertThat(new HeaderCuts(level(one), SOLD, "").ways()).hasSize(1);
  }
}

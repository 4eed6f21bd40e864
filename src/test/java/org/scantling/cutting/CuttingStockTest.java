package org.scantling.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The plan on cases that can be followed by hand, and what is refused. */
class CuttingStockTest {
  private static final Allowance SAW = new Allowance(2, 4, 0);

  private static CuttingProblem problem(List<PieceDemand> demands, List<Stick> sticks) {
    return new CuttingProblem(demands, sticks, SAW);
  }

  private static CuttingPlan solved(CuttingProblem problem) {
    return SoundPlan.check(problem, CuttingStock.solve(problem));
  }

  @Test
  void two_pieces_lose_a_kerf_between_them_and_the_trim_of_both_ends() {
    List<Stick> sticks = List.of(new Stick(100, 100), new Stick(101, 101));
    // 45 + 2 + 45 + 4 + 4 = 100
    assertThat(solved(problem(List.of(new PieceDemand(45, 2)), sticks)).cost()).isEqualTo(100);
    // 45 + 46 with the same losses asks for 101
    assertThat(
            solved(problem(List.of(new PieceDemand(45, 1), new PieceDemand(46, 1)), sticks)).cost())
        .isEqualTo(101);
  }

  @Test
  void room_kept_for_knots_counts_where_a_stick_is_cut_up() {
    CuttingProblem kept =
        new CuttingProblem(
            List.of(new PieceDemand(45, 2)),
            List.of(new Stick(100, 100), new Stick(101, 101)),
            new Allowance(2, 4, 1));
    assertThat(solved(kept).cost()).isEqualTo(101);
  }

  @Test
  void a_single_piece_may_be_as_long_as_its_stick() {
    CuttingPlan plan =
        solved(problem(List.of(new PieceDemand(100, 3)), List.of(new Stick(100, 7))));
    assertThat(plan.cuts()).containsExactly(new Cut(new Stick(100, 7), List.of(1), 3));
    assertThat(plan.proven()).isTrue();
    assertThat(plan.gapRatio()).isZero();
    assertThat(plan.sticks()).isEqualTo(3);
  }

  @Test
  void the_cheaper_way_wins_over_the_one_with_less_waste() {
    List<PieceDemand> demands = List.of(new PieceDemand(40, 2));
    // one stick of 90 wastes nothing but costs more than two of 50
    List<Stick> sticks = List.of(new Stick(90, 30), new Stick(50, 10));
    assertThat(solved(problem(demands, sticks)).cuts())
        .containsExactly(new Cut(new Stick(50, 10), List.of(1), 2));
  }

  @Test
  void no_more_pieces_are_cut_than_asked_for() {
    CuttingPlan plan = solved(problem(List.of(new PieceDemand(30, 4)), List.of(new Stick(110, 1))));
    assertThat(plan.cuts())
        .containsExactly(
            new Cut(new Stick(110, 1), List.of(3), 1), new Cut(new Stick(110, 1), List.of(1), 1));
  }

  @Test
  void a_piece_longer_than_every_stick_is_refused() {
    assertThatThrownBy(() -> problem(List.of(new PieceDemand(101, 1)), List.of(new Stick(100, 1))))
        .hasMessage("a piece of 101 ticks is longer than the longest stick, 100");
  }

  @Test
  void a_length_that_stands_twice_is_refused() {
    List<Stick> twice = List.of(new Stick(100, 1), new Stick(100, 2));
    assertThatThrownBy(() -> problem(List.of(new PieceDemand(10, 1)), twice))
        .hasMessage("sticks of 100 ticks stand twice");
    List<PieceDemand> again = List.of(new PieceDemand(10, 1), new PieceDemand(10, 1));
    assertThatThrownBy(() -> problem(again, List.of(new Stick(100, 1))))
        .hasMessage("pieces of 10 ticks stand twice");
  }

  @Test
  void nothing_to_cut_is_refused() {
    assertThatThrownBy(() -> problem(List.of(), List.of(new Stick(100, 1))))
        .hasMessage("there must be pieces to cut and sticks to cut them from");
  }

  @Test
  void lengths_counts_costs_and_losses_below_their_least_are_refused() {
    assertThatThrownBy(() -> new PieceDemand(0, 1)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new PieceDemand(1, 0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new Stick(0, 1)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new Stick(1, 0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new Allowance(0, -1, 0))
        .hasMessage("kerf, end trim and room for knots must be 0 or more, found 0, -1, 0");
  }
}

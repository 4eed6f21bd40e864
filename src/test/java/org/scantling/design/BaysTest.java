package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Bays of one length and bays told one by one, by plain measuring; no source. */
class BaysTest {
  private static final Bays GATE = Bays.of(List.of(60.0, 84.0, 48.0));

  private static Geometry over(Bays bays, int perBay) {
    return new Geometry(
        new Geometry.Plan(60, bays),
        new Geometry.Posts(3.5, 90),
        new Geometry.Headers(false, 3.5, 5.5, 12.25, 0.5),
        new Geometry.Crossbeams(perBay, 1.5, 5.5, 12, 0.75, 1));
  }

  private static List<Double> shares(Bays bays, int perBay) {
    return over(bays, perBay).crossbeamPlaces().stream().map(CrossbeamPlace::shareRatio).toList();
  }

  @Test
  void bays_that_are_all_as_long_are_even_bays() {
    assertThat(Bays.of(List.of(60.0, 60.0, 60.0))).isEqualTo(Bays.of(3, 60));
    assertThat(Bays.of(3, 60).lengthsIn()).containsExactly(60.0, 60.0, 60.0);
    assertThat(Bays.of(3, 60).mirrored()).isTrue();
    assertThat(GATE.even()).isFalse();
  }

  @Test
  void posts_stand_where_the_bays_before_them_end() {
    assertThat(GATE.alongIn(0)).isZero();
    assertThat(GATE.alongIn(1)).isEqualTo(60);
    assertThat(GATE.alongIn(2)).isEqualTo(144);
    assertThat(GATE.overallIn()).isEqualTo(192);
    assertThat(Bays.of(4, 51.5).alongIn(3)).isEqualTo(154.5);
  }

  @Test
  void bays_keep_their_proportion_when_the_longest_is_another() {
    assertThat(GATE.stretchedTo(84)).isSameAs(GATE);
    assertThat(GATE.stretchedTo(42).lengthsIn()).containsExactly(30.0, 42.0, 24.0);
    assertThat(Bays.of(3, 60).stretchedTo(45)).isEqualTo(Bays.of(3, 45));
  }

  @Test
  void a_walk_that_looks_the_same_from_both_ends_is_mirrored() {
    assertThat(GATE.mirrored()).isFalse();
    assertThat(Bays.of(List.of(60.0, 84.0, 60.0)).mirrored()).isTrue();
    assertThat(Bays.of(List.of(60.0, 84.0, 84.0, 60.0)).mirrored()).isTrue();
    assertThat(Bays.of(List.of(60.0, 84.0, 72.0, 60.0)).mirrored()).isFalse();
  }

  @Test
  void half_of_the_two_bays_beside_a_post_leans_on_it() {
    assertThat(GATE.tributaryIn()).isEqualTo((60 + 84) / 2.0);
    assertThat(Bays.of(List.of(30.0, 100.0)).tributaryIn()).isEqualTo(65);
    assertThat(Bays.of(1, 84).tributaryIn()).isEqualTo(42);
    assertThat(Bays.of(2, 84).tributaryIn()).isEqualTo(84);
  }

  @Test
  void no_space_of_a_bay_is_wider_than_those_of_the_longest() {
    assertThat(GATE.spacesIn(0, 7)).isEqualTo(5);
    assertThat(GATE.spacesIn(1, 7)).isEqualTo(7);
    assertThat(GATE.spacesIn(2, 7)).isEqualTo(4);
    assertThat(GATE.spacesIn(2, 6)).isEqualTo(4);
    assertThat(GATE.spaces(7)).isEqualTo(16);
  }

  @Test
  void crossbeams_stand_over_every_post_and_evenly_between() {
    Geometry geometry = over(GATE, 6);

    assertThat(geometry.crossbeamSpacingIn()).isEqualTo(14);
    assertThat(geometry.crossbeamsOnTail()).isZero();
    assertThat(geometry.crossbeamCount()).isEqualTo(5 + 6 + 4 + 1);
    assertThat(geometry.crossbeamsAtIn())
        .containsExactly(
            0.0, 12.0, 24.0, 36.0, 48.0, 60.0, 74.0, 88.0, 102.0, 116.0, 130.0, 144.0, 156.0, 168.0,
            180.0, 192.0);
    assertThat(geometry.narrowestGapIn()).isCloseTo(10.5, within(1e-9));
  }

  /** Half of each space beside it, over the widest space; at the ends the whole of the one. */
  @Test
  void a_crossbeam_carries_the_top_to_the_middle_of_the_spaces_beside_it() {
    List<Double> shares = shares(GATE, 6);

    assertThat(shares.get(0)).isCloseTo(12 / 14.0, within(1e-9));
    assertThat(shares.get(5)).isCloseTo(13 / 14.0, within(1e-9));
    assertThat(shares.get(7)).isCloseTo(1, within(1e-9));
    assertThat(shares.get(15)).isCloseTo(12 / 14.0, within(1e-9));
    assertThat(shares(Bays.of(3, 60), 5)).hasSize(18).containsOnly(1.0);
  }

  /** The same places whether a walk of even bays is told as one length or bay by bay. */
  @Test
  void even_bays_are_worked_as_they_always_were() {
    Geometry even = over(Bays.of(4, 51.4), 5);

    for (int i = 0; i < even.crossbeamsAtIn().size(); i++) {
      int place = i - even.crossbeamsOnTail();
      assertThat(even.crossbeamsAtIn().get(i)).isEqualTo(place * (51.4 / 5));
    }
    assertThat(even.lengthIn()).isEqualTo(4 * 51.4);
  }

  @Test
  void a_header_over_uneven_bays_is_cut_where_its_posts_stand() {
    Geometry geometry = over(GATE, 6);
    TopLine top = new TopLine(geometry, WayOfBuilding.LEVEL, 0, 36);
    CutHeaders cut = new CutHeaders(top, Splice.of("1+2"));
    double tailIn = 12.25 + 1.75;

    assertThat(cut.pieces(false)).hasSize(2);
    assertThat(cut.pieces(false).get(0).lengthIn()).isCloseTo(tailIn + 60, within(1e-9));
    assertThat(cut.pieces(false).get(1).lengthIn()).isCloseTo(84 + 48 + tailIn, within(1e-9));
    assertThat(cut.pieces(false).get(1).postIn(2)).isCloseTo(84, within(1e-9));
    assertThat(cut.turns()).isFalse();
  }
}

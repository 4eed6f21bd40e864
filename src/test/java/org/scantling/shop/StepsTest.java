package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.Structure;

/** Tops that go down in steps, and braces on ground that falls: one structure, told and listed. */
class StepsTest {
  @ParameterizedTest
  @CsvSource({
    "mower-lane, 8 %, auto, auto",
    "mower-lane, 10 %, auto, auto",
    "mower-lane, 12 %, on-top, auto",
    "mower-lane, 20 %, paired, auto",
    "mower-lane, 10 %, on-top, bracket",
    "mower-lane, 4 %, auto, bracket",
    "sloping-path, 9 %, auto, auto",
    "sloping-path, 14 %, on-top, concrete",
    "long-walk, 10 %, paired, auto",
    "long-walk, 10 %, on-top, auto",
    "long-walk, 6 %, auto, auto",
    "stone-terrace, 0 %, auto, auto",
    "stone-terrace, 6 %, auto, auto",
    "stone-terrace, 10 %, auto, auto",
    "stone-terrace, 10 %, on-top, auto",
  })
  void no_two_pieces_are_in_the_same_place(
      String name, String slope, String header, String footing) {
    Built built =
        Jobs.wish(
            name,
            "site.slope=" + slope,
            "preferences.header=" + header,
            "preferences.footing=" + footing);
    new Fitting(built).check();
  }

  /** Five bays: each row has five headers, each as long as it lies; paired, of two boards. */
  @Test
  void the_proposal_counts_the_headers_that_the_cut_list_cuts() {
    for (String style : List.of("paired", "on-top")) {
      Built built = Jobs.wish("mower-lane", "site.slope=10 %", "preferences.header=" + style);
      Pieces pieces = Pieces.of(built);
      for (String role : List.of("header", "post", "crossbeam", "rail")) {
        assertThat(told(built, role)).as(role).isEqualTo(pieces.count(role));
        assertThat(toldIn(built, role)).as(role).isCloseTo(listedIn(pieces, role), within(1.0));
      }
      assertThat(told(built, "header")).isEqualTo(style.equals("paired") ? 20 : 8);
      assertThat(pieces.open()).isEmpty();
    }
  }

  @Test
  void posts_and_braces_on_brackets_are_as_long_in_the_proposal_as_in_the_cut_list() {
    Built built = Jobs.wish("stone-terrace");
    Pieces pieces = Pieces.of(built);
    for (String role : List.of("post", "brace")) {
      assertThat(told(built, role)).as(role).isEqualTo(pieces.count(role));
      double eachIn = toldIn(built, role) / told(built, role);
      assertThat(eachIn)
          .as(role)
          .isCloseTo(listedIn(pieces, role) / pieces.count(role), within(1.0 / 16));
    }
  }

  /**
   * 34 in bays at 10 % step down 3.4 in; the boards of a middle bay reach from the middle of a post
   * to that of the next, and those of the bay below lie 3.4 in lower.
   */
  @Test
  void at_a_step_paired_boards_meet_at_the_middle_of_the_post() {
    Built built = Jobs.wish("mower-lane", "site.slope=10 %", "preferences.header=paired");
    for (Piece piece : Pieces.of(built).of("header")) {
      for (Place place : piece.places()) {
        double firstIn = Math.min(place.first().alongIn(), place.last().alongIn());
        int bay = (int) Math.max(0, Math.round(firstIn / 34));
        if (bay > 0) {
          assertThat(firstIn).isCloseTo(34 * bay, within(1e-6));
        }
        assertThat(place.first().upIn())
            .isCloseTo(
                built.geometry().posts().heightIn() - 3.4 * (bay + 1) - 7.25 / 2, within(1e-6));
      }
    }
  }

  /**
   * NDS 2018, Table 12.5.1A (from memory): 2 D at least from the end of a board loaded across its
   * grain. A plumb cut half a post from the row leaves 1.375 in or 2.75 D beside a 6x6, on any
   * slope a little more; bolts plumb under one another and a square cut left 1.9 D at 7.9 %.
   */
  @ParameterizedTest
  @CsvSource({"2 %", "6 %", "7.9 %"})
  void bolts_keep_two_diameters_from_a_cut_along_a_sloping_board(String slope) {
    Built built = Jobs.wish("long-walk", "site.slope=" + slope, "preferences.header=paired");
    int cut = 0;
    for (Piece piece : Pieces.of(built).of("header")) {
      Shape shape = piece.shape();
      for (Bore bore : shape.bores()) {
        double toLastIn =
            shape.lengthIn() - bore.atIn() - backIn(shape.last(), bore, shape.depthIn());
        double toFirstIn = bore.atIn() - backIn(shape.first(), bore, shape.depthIn());
        double boltIn = bore.diameterIn() - 1.0 / 16;
        assertThat(Math.min(toFirstIn, toLastIn))
            .as("bolt of %s at %s", piece.mark(), bore.atIn())
            .isGreaterThan(2 * boltIn);
        cut += Math.min(toFirstIn, toLastIn) < 3 * boltIn ? 1 : 0;
      }
    }
    assertThat(cut).isPositive();
  }

  /** How far the end lies behind its long point at the height of a hole. */
  private static double backIn(EndCut end, Bore bore, double depthIn) {
    if (!(end instanceof EndCut.Sloping sloping)) {
      return 0;
    }
    double fromTop = (depthIn / 2 - bore.offIn()) / depthIn;
    boolean longUpper = sloping.longEdge().equals("the upper edge");
    return sloping.setBackIn() * (longUpper ? fromTop : 1 - fromTop);
  }

  private static int told(Built built, String role) {
    return built.members().stream()
        .filter(each -> each.role().equals(role))
        .mapToInt(Structure.Member::count)
        .sum();
  }

  private static double toldIn(Built built, String role) {
    return built.members().stream()
        .filter(each -> each.role().equals(role))
        .mapToDouble(each -> each.count() * each.lengthIn())
        .sum();
  }

  private static double listedIn(Pieces pieces, String role) {
    return pieces.of(role).stream()
        .mapToDouble(each -> each.count() * each.shape().lengthIn())
        .sum();
  }
}

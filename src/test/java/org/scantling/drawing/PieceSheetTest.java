package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;
import org.scantling.shop.Piece;

/** A piece on the sawhorse: every figure is a place of the piece that the cut list has. */
class PieceSheetTest {
  static Stream<String> jobs() {
    return Job.all().stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void every_mark_on_the_tape_is_an_edge_or_a_hole_of_the_piece(String job) {
    Drawings drawings = Job.of(job).laidOut(UnitSystem.IMPERIAL);

    for (Piece piece : drawings.worked()) {
      for (Room room : Room.values()) {
        List<Double> figures =
            drawings.piece(piece, room).bare().stream()
                .filter(Ink.Measure.class::isInstance)
                .map(each -> Length.parse(words((Ink.Measure) each)))
                .toList();
        List<Double> places = List.copyOf(places(piece));
        assertThat(figures).as(piece.mark()).hasSameSizeAs(places);
        for (int i = 0; i < figures.size(); i++) {
          assertThat(figures.get(i)).isCloseTo(places.get(i), within(1.0 / 32 + 1e-9));
        }
      }
    }
  }

  private static String words(Ink.Measure measure) {
    String words = measure.letters().words();
    return words.equals("0") ? "0 in" : words;
  }

  private static Set<Double> places(Piece piece) {
    double lengthIn = piece.shape().lengthIn();
    Set<Double> places = new TreeSet<>(List.of(0.0, lengthIn));
    piece.shape().recesses().stream()
        .flatMap(each -> Stream.of(each.fromIn(), each.toIn()))
        .filter(each -> each > 0 && each < lengthIn)
        .forEach(places::add);
    piece.shape().bores().forEach(each -> places.add(each.atIn()));
    return places;
  }

  @Test
  void marks_that_lie_close_are_spread_in_their_order_and_no_further_than_it_takes() {
    List<Double> spread = PieceSheet.spread(List.of(0.0, 10.0, 11.0, 40.0), 4);

    assertThat(spread.get(0)).isEqualTo(0);
    assertThat(spread.get(2) - spread.get(1)).isCloseTo(4, within(1e-6));
    assertThat((spread.get(1) + spread.get(2)) / 2).isCloseTo(10.5, within(1e-6));
    assertThat(spread.get(3)).isEqualTo(40);
  }
}

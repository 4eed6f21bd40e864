package org.scantling.concurrent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InOrderTest {
  private static final int PIECES = 5_000;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void results_come_in_the_order_of_the_pieces_on_any_number_of_cores(int cores) {
    List<Integer> squares = new ArrayList<>();

    new InOrder(cores, cores * 3)
        .<Integer, Integer>map(pieces(PIECES), InOrderTest::slowWhereEven, squares::add);

    assertThat(squares)
        .isEqualTo(IntStream.range(0, PIECES).map(piece -> piece * piece).boxed().toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 16})
  void no_more_pieces_are_held_than_the_window_has(int window) {
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger handedOver = new AtomicInteger();
    AtomicInteger mostHeld = new AtomicInteger();
    Iterator<Integer> counted =
        IntStream.range(0, PIECES)
            .peek(
                piece -> {
                  int held = taken.incrementAndGet() - handedOver.get();
                  mostHeld.accumulateAndGet(held, Math::max);
                })
            .boxed()
            .iterator();

    new InOrder(2, window)
        .<Integer, Integer>map(
            counted, InOrderTest::slowWhereEven, result -> handedOver.incrementAndGet());

    assertThat(handedOver).hasValue(PIECES);
    // The iterator of a stream takes one piece ahead.
    assertThat(mostHeld.get()).isBetween(1, window + 1);
  }

  @Test
  void a_fault_ends_the_work_after_the_results_before_it() {
    List<Integer> before = new ArrayList<>();

    assertThatThrownBy(
            () ->
                new InOrder(3, 9)
                    .<Integer, Integer>map(
                        pieces(PIECES),
                        piece -> {
                          if (piece >= 20) {
                            throw new IllegalStateException("piece " + piece);
                          }
                          return piece;
                        },
                        before::add))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("piece 20");
    assertThat(before).isEqualTo(IntStream.range(0, 20).boxed().toList());
  }

  @Test
  void whoever_can_take_no_more_results_ends_the_work() {
    AtomicInteger taken = new AtomicInteger();

    assertThatThrownBy(
            () ->
                new InOrder(2, 4)
                    .<Integer, Integer>map(
                        IntStream.range(0, PIECES).peek(i -> taken.incrementAndGet()).iterator(),
                        piece -> piece,
                        result -> {
                          throw new IllegalStateException("full");
                        }))
        .hasMessage("full");
    assertThat(taken.get()).isLessThanOrEqualTo(6);
  }

  @Test
  void it_needs_a_core_and_a_window() {
    assertThatThrownBy(() -> new InOrder(0, 4)).hasMessageContaining("at least 1");
    assertThatThrownBy(() -> new InOrder(2, 0)).hasMessageContaining("at least 1");
  }

  private static Iterator<Integer> pieces(int count) {
    return IntStream.range(0, count).iterator();
  }

  private static int slowWhereEven(int piece) {
    int rounds = piece % 2 == 0 ? 2_000 : 1;
    int square = 0;
    for (int round = 0; round < rounds; round++) {
      square = piece * piece;
    }
    return square;
  }
}

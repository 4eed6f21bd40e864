package org.scantling.concurrent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CoresTest {
  @Test
  void results_stand_in_the_order_of_the_pieces_and_each_is_worked_once() {
    List<Integer> pieces = IntStream.range(0, 200).boxed().toList();
    AtomicInteger worked = new AtomicInteger();

    List<Integer> squares =
        Cores.map(
            pieces,
            piece -> {
              worked.incrementAndGet();
              return piece * piece;
            });

    assertThat(squares).isEqualTo(pieces.stream().map(piece -> piece * piece).toList());
    assertThat(worked).hasValue(200);
  }

  @Test
  void nothing_to_do_is_done_at_once() {
    assertThat(Cores.map(List.<Integer>of(), piece -> piece)).isEmpty();
  }

  @Test
  void the_fault_of_the_first_faulty_piece_is_thrown() {
    assertThatThrownBy(
            () ->
                Cores.map(
                    List.of(1, 2, 3),
                    piece -> {
                      if (piece > 1) {
                        throw new IllegalArgumentException("piece " + piece);
                      }
                      return piece;
                    }))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("piece 2");
  }
}

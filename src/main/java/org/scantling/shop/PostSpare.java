package org.scantling.shop;

import java.util.List;
import java.util.OptionalDouble;
import org.scantling.tables.TopSpare;

/**
 * What is left on the posts until their tops are cut where they stand: the usual length, or less
 * where that lets them come out of a shorter stick, but never under the least.
 */
final class PostSpare {
  private final Built built;

  PostSpare(Built built) {
    this.built = built;
  }

  /**
   * @param longestIn finished length of the longest post
   */
  double spareIn(double longestIn) {
    List<Double> soldIn = built.soldForPosts().lengthsIn();
    OptionalDouble shorterIn =
        new TopSpare(usualIn(), built.shop("setout.post-spare-least"))
            .shorterStickIn(longestIn, soldIn);
    if (shorterIn.isEmpty()) {
      return usualIn();
    }
    Tape tape = built.tape();
    return tape.inches(tape.ticksDown(shorterIn.getAsDouble()) - tape.ticks(longestIn));
  }

  double usualIn() {
    return built.shop("setout.post-spare");
  }
}

package org.scantling.shop;

import java.util.Optional;
import org.scantling.tables.Yard;

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
    Sold sold = built.sold(built.member("post").size());
    Optional<Yard.Offer> usual = sold.holding(longestIn + usualIn());
    Optional<Yard.Offer> least = sold.holding(longestIn + built.shop("setout.post-spare-least"));
    boolean shorter =
        least.isPresent()
            && (usual.isEmpty() || least.get().lengthIn() < usual.get().lengthIn() - 1e-6);
    if (!shorter) {
      return usualIn();
    }
    Tape tape = built.tape();
    return tape.inches(tape.ticksDown(least.get().lengthIn()) - tape.ticks(longestIn));
  }

  double usualIn() {
    return built.shop("setout.post-spare");
  }
}

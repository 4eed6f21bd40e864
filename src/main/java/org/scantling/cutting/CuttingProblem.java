package org.scantling.cutting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is to be cut from what.
 *
 * <p>A stick that yields a single piece may be used whole: it keeps its own ends, so the piece may
 * be as long as the stick. A stick cut into more pieces loses the allowance.
 *
 * @param demands pieces, each length once
 * @param sticks lengths sold, each once
 * @param allowance what a stick loses
 */
public record CuttingProblem(List<PieceDemand> demands, List<Stick> sticks, Allowance allowance) {
  /**
   * @throws IllegalArgumentException when there is nothing to cut or to cut from, a length stands
   *     twice, or a piece is longer than every stick
   */
  public CuttingProblem {
    demands = List.copyOf(demands);
    sticks = List.copyOf(sticks);
    if (demands.isEmpty() || sticks.isEmpty()) {
      throw new IllegalArgumentException("there must be pieces to cut and sticks to cut them from");
    }
    once("pieces", demands.stream().map(PieceDemand::lengthTicks).toList());
    once("sticks", sticks.stream().map(Stick::lengthTicks).toList());
    int longest = sticks.stream().mapToInt(Stick::lengthTicks).max().orElseThrow();
    for (PieceDemand demand : demands) {
      if (demand.lengthTicks() > longest) {
        throw new IllegalArgumentException(
            "a piece of "
                + demand.lengthTicks()
                + " ticks is longer than the longest stick, "
                + longest);
      }
    }
  }

  private static void once(String what, List<Integer> lengths) {
    Set<Integer> seen = new HashSet<>();
    for (int length : lengths) {
      if (!seen.add(length)) {
        throw new IllegalArgumentException(what + " of " + length + " ticks stand twice");
      }
    }
  }

  /** True where that many pieces of each length fit on the stick. */
  boolean fits(Pattern pattern) {
    int pieces = 0;
    long usedTicks = 0;
    for (int i = 0; i < demands.size(); i++) {
      pieces += pattern.count(i);
      usedTicks += (long) pattern.count(i) * demands.get(i).lengthTicks();
    }
    Stick stick = sticks.get(pattern.stick());
    return pieces == 1
        ? usedTicks <= stick.lengthTicks()
        : usedTicks + (pieces - 1L) * allowance.kerfTicks() <= allowance.roomTicks(stick);
  }
}

package org.scantling.reasons;

import java.util.List;

/**
 * The least that would have to be asked otherwise for a wanted answer.
 *
 * @param wanted the answer
 * @param today the proposal for the site as it is
 * @param kept true where today's answer is the wanted one already; then nothing was searched
 * @param singles for each demand and direction the nearest value that leads to it by itself, the
 *     one that gives up the least share first; what can be chosen before what the place sets
 * @param pairs two changes that lead to it together where neither does alone, the least first
 * @param searched what was tried
 */
public record LeastChange(
    Wanted wanted,
    Proposal today,
    boolean kept,
    List<Way> singles,
    List<Way> pairs,
    List<Searched> searched) {

  /**
   * The values of one demand that were tried.
   *
   * @param least the least value, or the first word
   * @param most the greatest value, or the last word
   */
  public record Searched(Demand demand, Outcome least, Outcome most) {}

  public LeastChange {
    singles = List.copyOf(singles);
    pairs = List.copyOf(pairs);
    searched = List.copyOf(searched);
  }

  /** True where no change that was tried leads to it. */
  public boolean hopeless() {
    return !kept && singles.isEmpty() && pairs.isEmpty();
  }
}

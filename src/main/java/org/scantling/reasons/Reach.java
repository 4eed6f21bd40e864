package org.scantling.reasons;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far today's choices hold along one demand.
 *
 * @param demand the demand
 * @param today its value now: what the site file states, else what was decided
 * @param least the least value that was searched
 * @param most the greatest value that was searched
 * @param points where choices turn
 * @param mixed choices that come back beyond a threshold, with all their stretches
 * @param ends where a structure ends, or begins, at all: downwards and upwards
 */
public record Reach(
    Demand demand,
    Outcome today,
    Outcome least,
    Outcome most,
    List<Threshold> points,
    Map<Question, List<Stretch>> mixed,
    List<End> ends) {

  /**
   * Where a structure inside the rule base ends, seen from today; or begins, where there is none
   * today.
   *
   * @param up true towards more of the demand, or later words of its table
   * @param at the last value that is like today; of words, today's
   * @param beyond the next value, which is not; of words, any
   * @param refused what stops it, on the side where there is none
   */
  public record End(
      boolean up, Outcome at, Outcome beyond, Proposal.Result.NeedsEngineer refused) {}

  public Reach {
    points = List.copyOf(points);
    mixed = Map.copyOf(mixed);
    ends = List.copyOf(ends);
  }

  Reach about(Set<Question> asked) {
    Map<Question, List<Stretch>> theirs = new LinkedHashMap<>(mixed);
    theirs.keySet().retainAll(asked);
    return new Reach(
        demand,
        today,
        least,
        most,
        points.stream().filter(point -> asked.contains(point.question())).toList(),
        theirs,
        ends);
  }
}

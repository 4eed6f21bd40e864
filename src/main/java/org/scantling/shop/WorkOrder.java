package org.scantling.shop;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * The order of work.
 *
 * @param steps from the first call to the planting
 * @param lifts what each piece weighs and how many people it takes, the heaviest first
 */
public record WorkOrder(List<Step> steps, List<Lift> lifts) {
  public WorkOrder {
    steps = List.copyOf(steps);
    lifts = List.copyOf(lifts);
  }

  /**
   * @param number of the step; remarks carry that of the step they belong to
   * @param part step, hold, safety, saving or alone
   */
  public record Step(int number, String part, String text, Source source) {}

  /**
   * @param hands 1, 2, or 3 for more than two
   */
  public record Lift(String mark, String what, double weightLb, int hands) {}
}

package org.scantling.reasons;

/**
 * What the whole structure comes to with one number of bays, tried before any is preferred.
 *
 * @param option the number of bays
 * @param timberIn3 all timber, cubic inches
 * @param newSizes members whose size differs from the base's
 */
public record BayTrial(String option, double timberIn3, int newSizes) implements Fact {
  @Override
  public String reference() {
    return Question.BAYS.id() + "=" + option;
  }
}

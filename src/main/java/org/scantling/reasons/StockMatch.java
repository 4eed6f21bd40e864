package org.scantling.reasons;

/**
 * The size that this yard sells in place of a proven size that it does not.
 *
 * @param question the size question
 * @param proven the base's size
 * @param option the nearest size sold that is no smaller either way
 */
public record StockMatch(Question question, String proven, String option) implements Fact {
  @Override
  public String reference() {
    return "base:" + question.id();
  }
}

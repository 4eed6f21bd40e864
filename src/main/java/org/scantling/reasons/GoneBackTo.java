package org.scantling.reasons;

/**
 * An option that was passed over while others near it led nowhere, and is tried after all.
 *
 * @param question the question the option answers
 */
public record GoneBackTo(Question question, String option) implements Fact {
  @Override
  public String reference() {
    return question.id() + "=" + option;
  }
}

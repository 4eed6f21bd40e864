package org.scantling.reasons;

/** The dressed size behind an answered size question, in inches. */
public record SizeOf(Question question, int plies, double breadthIn, double depthIn)
    implements Fact {
  @Override
  public String reference() {
    return question.id();
  }
}

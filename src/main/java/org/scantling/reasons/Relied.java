package org.scantling.reasons;

/** A rule whose finding an answer rests on; cautions look for the assumptions among them. */
public record Relied(String rule) implements Fact {
  /** The occasion on which this rule calls for a caution, as {@code cautions.csv} has it. */
  public String occasion() {
    return "rule=" + rule;
  }

  @Override
  public String reference() {
    return rule;
  }
}

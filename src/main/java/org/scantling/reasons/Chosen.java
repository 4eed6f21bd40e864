package org.scantling.reasons;

/** A word that the site file states, or the contract's default for it. */
public record Chosen(Demand demand, String word) implements Fact {
  /** The occasion on which this wish calls for a caution, as {@code cautions.csv} has it. */
  public String occasion() {
    return demand.path() + "=" + word;
  }

  @Override
  public String reference() {
    return demand.path();
  }
}

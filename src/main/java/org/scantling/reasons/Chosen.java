package org.scantling.reasons;

/** A word that the site file states, or the contract's default for it. */
public record Chosen(Demand demand, String word) implements Fact {
  @Override
  public String reference() {
    return demand.path();
  }
}

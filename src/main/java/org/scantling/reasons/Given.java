package org.scantling.reasons;

/** A number that the site file states. A demand that is not stated is no fact at all. */
public record Given(Demand demand, double number) implements Fact {
  @Override
  public String reference() {
    return demand.path();
  }
}

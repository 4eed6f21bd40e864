package org.scantling.reasons;

/** A rule whose finding an answer rests on; cautions look for the assumptions among them. */
public record Relied(String rule) implements Fact {
  @Override
  public String reference() {
    return rule;
  }
}

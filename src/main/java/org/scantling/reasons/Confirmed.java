package org.scantling.reasons;

/** A check of the finished answers. */
public record Confirmed(Checked checked) implements Fact {
  @Override
  public String reference() {
    return checked.id();
  }

  /** The check id, so that a rule can join the row with its limit. */
  public String id() {
    return checked.id();
  }

  public double ratio() {
    return checked.check().ratio();
  }

  /** True when the check is over the limit that a table row sets. */
  public boolean over(double limitRatio) {
    return !checked.check().passes(limitRatio);
  }
}

package org.scantling.reasons;

/** A check worked for one candidate of a question. */
public record OptionCheck(Question question, String option, Checked checked) implements Fact {
  @Override
  public String reference() {
    return checked.id();
  }

  /** The check id, so that a rule can join the row with its limit. */
  public String id() {
    return checked.id();
  }

  /** True when the check is over the limit that a table row sets. */
  public boolean over(double limitRatio) {
    return !checked.check().passes(limitRatio);
  }
}

package org.scantling.reasons;

/**
 * What one rule of thumb by itself would have answered on a site, beside what calculation alone
 * would have.
 *
 * @param note the rule
 * @param question what both answer
 * @param standing which of them asks for more
 * @param spoke true where the rule forbade anything at all
 * @param thumb the rule's answer
 * @param calculated the answer by calculation
 */
public record ThumbTrial(
    RuleNote note,
    Question question,
    Standing standing,
    boolean spoke,
    String thumb,
    String calculated) {

  /** How the thumb stands beside the calculation. */
  public enum Standing {
    SAFER,
    EQUAL,
    NOT_ENOUGH
  }
}

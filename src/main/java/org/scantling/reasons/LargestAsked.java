package org.scantling.reasons;

/**
 * The largest size that the site file allows for a member.
 *
 * @param question the size question
 * @param demand where the site file says it
 * @param size its name
 * @param breadthIn dressed thickness
 * @param depthIn dressed width
 */
public record LargestAsked(
    Question question, Demand demand, String size, double breadthIn, double depthIn)
    implements Fact {
  @Override
  public String reference() {
    return demand.path();
  }
}

package org.scantling.rulebase;

/**
 * The rule base itself is broken: rules missing, unlisted, looping or unexplained. Never the user's
 * fault.
 */
public final class RuleBaseFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RuleBaseFault(String message) {
    super(message);
  }

  RuleBaseFault(String message, Throwable cause) {
    super(message, cause);
  }
}

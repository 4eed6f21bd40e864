package org.scantling.print;

import org.scantling.reasons.Proposal;
import org.scantling.words.Words;

/** A proposal as text for the builder: the answer first, then why. */
public final class ProposalText {
  private ProposalText() {}

  /** The text, no line wider than the options say. */
  public static String of(Proposal proposal, Words words, PrintOptions options) {
    return of(proposal, words, options, new Page());
  }

  /**
   * The same.
   *
   * @param more what stands before the cautions
   */
  public static String of(Proposal proposal, Words words, PrintOptions options, Page more) {
    return TextPage.print(ProposalPage.of(proposal, words, options, more), options);
  }
}

package org.scantling.print;

import org.scantling.reasons.Proposal;
import org.scantling.words.Words;

/** The same as {@link ProposalText}, in Markdown. */
public final class ProposalMarkdown {
  private ProposalMarkdown() {}

  public static String of(Proposal proposal, Words words, PrintOptions options) {
    return of(proposal, words, options, new Page());
  }

  /**
   * The same.
   *
   * @param more what stands before the cautions
   */
  public static String of(Proposal proposal, Words words, PrintOptions options, Page more) {
    return MarkdownPage.print(ProposalPage.of(proposal, words, options, more));
  }
}

package org.scantling.reasons;

import java.util.List;
import java.util.Optional;

/**
 * Whole structures that could be built on a site, each good at something.
 *
 * @param today what is proposed, or why nothing is
 * @param shown what is proposed first, where it is, then the others
 * @param tried how many were worked out
 * @param sound how many of them come out as they were asked for and pass every check
 * @param beaten which of those shown is worse at nothing than what is proposed and better at
 *     something, where one is
 */
public record WholeOptions(
    Proposal today, List<WholeOption> shown, int tried, int sound, Optional<WholeOption> beaten) {
  public WholeOptions {
    shown = List.copyOf(shown);
  }
}

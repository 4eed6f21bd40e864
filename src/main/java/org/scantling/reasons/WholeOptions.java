package org.scantling.reasons;

import java.util.List;
import java.util.Optional;

/**
 * Whole structures that could be built on a site, each good at something.
 *
 * @param today what is proposed, or why nothing is
 * @param shown what is proposed first, where it is, then the others
 * @param tried how many were worked out
 * @param sound how many of them pass every check
 * @param beaten by which of the others what is proposed is beaten, where it is
 */
public record WholeOptions(
    Proposal today, List<WholeOption> shown, int tried, int sound, Optional<WholeOption> beaten) {
  public WholeOptions {
    shown = List.copyOf(shown);
  }
}

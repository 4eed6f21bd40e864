package org.scantling.reasons;

import java.util.List;
import java.util.Set;

/**
 * How far each choice of a proposal holds, and what comes next.
 *
 * @param today the proposal for the site as it is
 * @param questions what was asked about, in the order of answering
 * @param reaches one for each demand that was searched
 */
public record Thresholds(Proposal today, Set<Question> questions, List<Reach> reaches) {
  public Thresholds {
    reaches = List.copyOf(reaches);
  }

  /** The same search, told of these questions only. */
  public Thresholds about(Set<Question> asked) {
    return new Thresholds(today, asked, reaches.stream().map(reach -> reach.about(asked)).toList());
  }
}

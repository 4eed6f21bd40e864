package org.scantling.reasons;

import java.util.List;

/**
 * One finding as part of a decision.
 *
 * @param finding what the rule found
 * @param note the rule
 * @param governing true for the finding that set the answer
 * @param because what the rule read, by reference
 */
public record Reason(Finding finding, RuleNote note, boolean governing, List<String> because) {
  public Reason {
    because = List.copyOf(because);
  }

  /** The same, as the finding that set the answer or as another. */
  public Reason governing(boolean sets) {
    return new Reason(finding, note, sets, because);
  }

  /** The table row's source where the rule leaned on one, else the rule's own. */
  public Source source() {
    return finding.evidence().rows().isEmpty()
        ? note.source()
        : finding.evidence().rows().get(0).source();
  }
}

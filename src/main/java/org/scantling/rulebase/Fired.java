package org.scantling.rulebase;

import java.util.List;
import org.scantling.reasons.Finding;
import org.scantling.reasons.RuleNote;

/**
 * A finding with the rule that made it and what that rule read.
 *
 * @param because references of the matched facts, sorted
 */
public record Fired(Finding finding, RuleNote note, List<String> because) {
  /** The id of the rule. */
  public String rule() {
    return note.id();
  }
}

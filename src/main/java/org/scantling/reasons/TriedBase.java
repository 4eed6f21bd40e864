package org.scantling.reasons;

import java.util.List;
import java.util.Optional;

/**
 * One of several bases that a site file names, with what would come of it.
 *
 * @param file its path, as the site file has it
 * @param name what it is called: its title, with its file where another has the same
 * @param proposal what is answered over it, without the causes of changes, checks and cautions
 * @param counts how much would change, in the order in which it weighs
 * @param changed the questions whose answers were counted
 * @param reason why it gave way to the one that was taken; empty for that one
 */
public record TriedBase(
    String file,
    String name,
    Proposal proposal,
    List<BaseCount> counts,
    List<Question> changed,
    Optional<Reason> reason) {

  public TriedBase {
    counts = List.copyOf(counts);
    changed = List.copyOf(changed);
  }

  public boolean taken() {
    return reason.isEmpty();
  }
}

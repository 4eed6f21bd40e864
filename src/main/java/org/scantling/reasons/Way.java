package org.scantling.reasons;

import java.util.List;

/**
 * Changes that, made together, lead to a wanted answer; none of them does alone.
 *
 * @param changes one or two
 * @param then what the engine proposes with them
 */
public record Way(List<Change> changes, Proposal then) {
  public Way {
    changes = List.copyOf(changes);
  }

  /** The sum of what is given up. */
  public double shareRatio() {
    return changes.stream().mapToDouble(Change::shareRatio).sum();
  }

  /** True where nothing of it is set by the place. */
  public boolean choice() {
    return changes.stream().allMatch(Change::choice);
  }
}

package org.scantling.reasons;

import java.util.List;

/**
 * A whole structure that a small change would lead to: it passes every check.
 *
 * @param id the row of near-misses.csv that it comes of
 * @param change what is asked otherwise
 * @param settings what {@code --set} takes to have it proposed
 * @param then what is proposed then
 */
public record SmallChange(String id, Change change, List<String> settings, Proposal then) {
  public SmallChange {
    settings = List.copyOf(settings);
  }
}

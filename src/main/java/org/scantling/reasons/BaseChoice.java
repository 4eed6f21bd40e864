package org.scantling.reasons;

import java.util.List;

/**
 * Which of several bases a site starts from.
 *
 * @param decision the base that was taken, with what the others gave way to
 * @param tried every base that the site file names, in its order
 */
public record BaseChoice(Decision decision, List<TriedBase> tried) {
  public BaseChoice {
    tried = List.copyOf(tried);
    if (tried.stream().filter(TriedBase::taken).count() != 1) {
      throw new IllegalArgumentException("one base is taken, and no more");
    }
  }

  /** The one that was taken. */
  public TriedBase taken() {
    return tried.get(place());
  }

  /** Its place in the site file, from 0. */
  public int place() {
    return tried.stream().map(TriedBase::taken).toList().indexOf(true);
  }

  /** Those that gave way, in the order of the site file. */
  public List<TriedBase> others() {
    return tried.stream().filter(each -> !each.taken()).toList();
  }
}

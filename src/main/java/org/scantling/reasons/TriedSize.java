package org.scantling.reasons;

import java.util.List;

/**
 * The next smaller size of a member, with the check that stopped it worked as that of the size
 * proposed.
 *
 * @param option the size
 * @param checked the check of that size
 * @param asStopped true where the check comes to what stopped the size; other timbers of the
 *     structure may have changed since
 * @param steps its working, each step after what it reads
 */
public record TriedSize(
    Question question,
    String option,
    Checked checked,
    boolean asStopped,
    List<CalculationStep> steps) {
  public TriedSize {
    steps = List.copyOf(steps);
  }
}

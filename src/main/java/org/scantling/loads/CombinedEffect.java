package org.scantling.loads;

/**
 * What one combination does, in the unit of the effects it was made of.
 *
 * @param combination the combination
 * @param effect the combined effect, with its sign
 * @param vinesCounted false where the vines would have helped and were left out
 */
public record CombinedEffect(LoadCombination combination, double effect, boolean vinesCounted) {
  public CombinedEffect {
    Argument.finite("combined effect", effect);
  }
}

package org.scantling.reasons;

/**
 * The base design stands somewhere; without this fact it is a drawing.
 *
 * @param sinceYear first year of its service
 * @param slopePercent fall of the ground there along the walk
 */
public record ServiceRecord(int sinceYear, double slopePercent) implements Fact {
  @Override
  public String reference() {
    return "base:proven";
  }
}

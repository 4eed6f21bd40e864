package org.scantling.reasons;

/**
 * The base design stands somewhere; without this fact it is a drawing.
 *
 * @param sinceYear first year of its service
 */
public record ServiceRecord(int sinceYear) implements Fact {
  @Override
  public String reference() {
    return "base:proven";
  }
}

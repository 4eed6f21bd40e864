package org.scantling.confirm;

/**
 * What the wind does to a post of the row that stands on the higher ground, and so is shorter.
 *
 * @param across wind square to the walk
 * @param along wind along the walk
 */
public record HighRow(SharedPush across, SharedPush along) {
  double heightIn() {
    return across.push().heightIn();
  }
}

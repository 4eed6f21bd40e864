package org.scantling.drawing;

/** On which side of what is drawn something stands. */
enum Side {
  ABOVE,
  BELOW,
  LEFT,
  RIGHT;

  /** True where a line along that side runs from top to bottom. */
  boolean upright() {
    return this == LEFT || this == RIGHT;
  }
}

package org.scantling.mechanics;

/** In whose directions a load on a frame member is given. */
public enum Axes {
  /** x sideways, y upwards, as the nodes are placed. */
  GLOBAL,
  /** x along the member from start to end, y to its left. */
  MEMBER
}

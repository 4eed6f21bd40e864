package org.scantling.mechanics;

/** Which ends of a frame member are joined as hinges, so that they pass on no moment. */
public enum Hinges {
  NONE,
  START,
  END,
  BOTH
}

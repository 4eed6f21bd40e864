package org.scantling.engine;

/** How much of a proposal is worked out beside its answers and the findings they rest on. */
enum Telling {
  /** What moved each change, and how the base has stood. */
  WHOLE,

  /** Neither: for a search through many sites, which has no reader. */
  ANSWERS
}

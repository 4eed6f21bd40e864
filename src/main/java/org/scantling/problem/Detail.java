package org.scantling.problem;

/** How much of a proposal is worked out beside its answers and the findings they rest on. */
public enum Detail {
  /** What moved each change, how the base has stood, every check and caution. */
  FULL,

  /** Every check, but neither causes nor cautions: for whole structures that are compared. */
  CHECKS,

  /** Nothing else: for a search through many sites, which has no reader. */
  ANSWERS
}

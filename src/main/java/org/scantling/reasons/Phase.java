package org.scantling.reasons;

import java.util.Locale;

/**
 * The order of work of the rule base, along the load path; one folder of {@code rules/} each. The
 * last chooses among whole structures, and is no part of deciding one.
 */
public enum Phase {
  CLIMATE,
  LOADS,
  CLEARANCE,
  LAYOUT,
  RHYTHM,
  CROSSBEAMS,
  HEADERS,
  HEIGHT,
  SUPPORT,
  SIDES,
  POSTS,
  FOOTINGS,
  JOINTS,
  CAUTIONS,
  BASE;

  /** True for a phase that answers questions about one structure. */
  public boolean answers() {
    return compareTo(CAUTIONS) < 0;
  }

  /** The folder of {@code rules/} and the last part of the rule package. */
  public String folder() {
    return name().toLowerCase(Locale.ROOT);
  }
}

package org.scantling.reasons;

import java.util.Locale;

/** The order of work of the rule base, along the load path; one folder of {@code rules/} each. */
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
  CAUTIONS;

  /** The folder of {@code rules/} and the last part of the rule package. */
  public String folder() {
    return name().toLowerCase(Locale.ROOT);
  }
}

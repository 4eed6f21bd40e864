package org.scantling.reasons;

import java.util.Locale;

/** How much a caution matters to somebody's safety, worst last. */
public enum Severity {
  NOTE,
  MEDIUM,
  HIGH;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}

package org.scantling.visit;

import java.util.Locale;

/** What a visit measures. */
public enum VisitKind {
  /** A place where something is to be built: a site file comes of it. */
  SITE,
  /** A structure that stands: a design file comes of it. */
  BASE,
  /** What has happened to such a structure since: an entry of its record comes of it. */
  RECORD;

  static VisitKind of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}

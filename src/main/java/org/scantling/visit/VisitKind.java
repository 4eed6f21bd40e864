package org.scantling.visit;

/** What a visit measures. */
public enum VisitKind {
  /** A place where something is to be built: a site file comes of it. */
  SITE,
  /** A structure that stands: a design file comes of it. */
  BASE;

  static VisitKind of(String word) {
    return word.equals("base") ? BASE : SITE;
  }
}

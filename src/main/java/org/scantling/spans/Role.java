package org.scantling.spans;

import java.util.Locale;

/** What a span table is about. */
public enum Role {
  CROSSBEAMS("crossbeam", "spacing"),
  HEADERS("header", "tributary"),
  POSTS("post", "tributary");

  private final String member;
  private final String step;

  Role(String member, String step) {
    this.member = member;
    this.step = step;
  }

  /** The word on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** One of them, as check ids and the sizes table have it. */
  public String member() {
    return member;
  }

  /** What the columns of the table go by: spacing, or the width or area that one carries. */
  public String step() {
    return step;
  }
}

package org.scantling.print;

import org.scantling.sayings.Sayings;

/**
 * One thing as the base has it and as it is here.
 *
 * @param name such as posts
 * @param then how the base has it; empty where it has none
 * @param now how it is here; empty where it has gone
 * @param novel true where it is not as in the base
 * @param proven true where the base has it
 * @param lead true where the headline names it when it is novel
 * @param place true for what belongs to the place and not to the structure
 * @param joint true for what a base design has no record of
 * @param usual true where another way is told as stronger than the usual one
 */
record Compared(
    String name,
    String then,
    String now,
    boolean novel,
    boolean proven,
    boolean lead,
    boolean place,
    boolean joint,
    boolean usual) {

  private static final Sayings SAYINGS = Sayings.of("comparison");

  /** True where the base has none of it. */
  boolean hadNone() {
    return then.isEmpty() || then.equals(SAYINGS.say("none"));
  }

  /** How the base has it, in a word where it does not say or has none. */
  String before() {
    if (!then.isEmpty()) {
      return then;
    }
    return SAYINGS.say(joint ? "not-in-file" : "none");
  }

  /**
   * Name and value as one says them: no braces, posts in the ground without "standing", and knee
   * braces without "braces".
   */
  static String said(String name, String value) {
    if (value.equals(SAYINGS.say("none"))) {
      return SAYINGS.say("no", "name", name);
    }
    return value.startsWith("posts ") || value.contains(name) ? value : name + " " + value;
  }

  /** What is here now, in a word where it has gone. */
  String here() {
    return now.isEmpty() ? SAYINGS.say("none") : now;
  }
}

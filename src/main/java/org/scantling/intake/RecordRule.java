package org.scantling.intake;

import org.scantling.design.BaseDesign;

/** Only a base that stands somewhere has a record that the checks may be held to. */
final class RecordRule {
  private static final String GROUP = "preferences";
  private static final String KEY = "basis";
  private static final String FIELD = GROUP + "." + KEY;

  private RecordRule() {}

  static void check(Node.Group file, Readings said, BaseDesign base, Problems problems) {
    if (base.proven().isPresent() || !said.maybeWord(FIELD).filter("proven"::equals).isPresent()) {
      return;
    }
    if (file.at(GROUP) instanceof Node.Group preferences) {
      problems.add(
          preferences
              .originOf(KEY)
              .problem(FIELD, "proven", "published")
              .withAdvice(ProblemPhrases.say("advice.no-record", "title", base.title())));
    }
  }
}

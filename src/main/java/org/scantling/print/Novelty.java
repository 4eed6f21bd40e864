package org.scantling.print;

import org.scantling.reasons.Decision;
import org.scantling.words.AnswerWords;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** What a reader who knows the base design has to be told. */
final class Novelty {
  private Novelty() {}

  /** True for what the base has otherwise, or does not have at all. */
  static boolean is(SubjectRow row, Decision decision, Voice voice) {
    boolean added =
        decision.base().isEmpty()
            && !row.line().isEmpty()
            && !row.place()
            && !AnswerWords.of(voice).plain(decision);
    return decision.changed() || added;
  }
}

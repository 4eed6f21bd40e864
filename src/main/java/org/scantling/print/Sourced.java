package org.scantling.print;

import org.scantling.reasons.Decision;
import org.scantling.reasons.Reason;
import org.scantling.words.Voice;

/** What a reason says, with where it comes from in parentheses. */
final class Sourced {
  private Sourced() {}

  /** Of a decision that it is one of the reasons for. */
  static String sentence(Voice voice, Reason reason, Decision decision) {
    return sourced(voice, reason, voice.sentence(reason, decision));
  }

  /** Of a reason that stands for itself. */
  static String sentence(Voice voice, Reason reason) {
    return sourced(voice, reason, voice.sentence(reason));
  }

  private static String sourced(Voice voice, Reason reason, String sentence) {
    return sentence + " (" + voice.source(reason.source()) + ")";
  }
}

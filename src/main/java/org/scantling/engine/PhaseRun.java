package org.scantling.engine;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scantling.answers.Answers;
import org.scantling.facts.PhaseFacts;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.rulebase.Fired;

/**
 * One phase worked through: what was laid out, what the rules found, and all that this rests on
 * besides what holds throughout the problem.
 *
 * @param phaseFacts what was laid out
 * @param told facts of the pass itself that some rule of the phase can match
 * @param answers the answers so far
 * @param floors sizes below which the answers would not go
 * @param looked the questions whose answers were looked up in them while laying out
 * @param fired what the rules found
 */
record PhaseRun(
    PhaseFacts phaseFacts,
    List<Fact> told,
    Answers answers,
    Map<Question, String> floors,
    Set<Question> looked,
    List<Fired> fired) {

  /** True while working the phase through again would come to the same. */
  boolean holds(List<Fact> toldNow, Answers now, Map<Question, String> floorsNow) {
    // Without floors everything was worked that might be asked for with them.
    boolean enough = floors.isEmpty() || floors.equals(floorsNow);
    if (!enough || !told.equals(toldNow)) {
      return false;
    }
    for (Question question : looked) {
      if (!answers.find(question).equals(now.find(question))) {
        return false;
      }
    }
    return true;
  }
}

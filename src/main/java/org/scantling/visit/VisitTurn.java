package org.scantling.visit;

import java.util.Optional;

/** What came of an answer. */
public sealed interface VisitTurn {
  /**
   * It was taken.
   *
   * @param answers all answers with this one
   * @param read how it was read, where that is not plain from what was typed
   */
  record Taken(VisitAnswers answers, Optional<String> read) implements VisitTurn {}

  /**
   * It was not.
   *
   * @param why what is wrong and what would be right
   */
  record Refused(String why) implements VisitTurn {}
}

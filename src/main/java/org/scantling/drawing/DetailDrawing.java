package org.scantling.drawing;

import org.scantling.reasons.Question;

/** What is drawn larger, each where the structure has it. */
public enum DetailDrawing {
  SEAT("detail-seat", Question.CROSSBEAM_JOINT),
  HEADER("detail-header", Question.HEADER_JOINT),
  SPLICE("detail-splice", Question.HEADER_SPLICE),
  BRACE_ACROSS("detail-brace-across", Question.BRACE_JOINT),
  BRACE_ALONG("detail-brace-along", Question.BRACE_JOINT),
  RAIL("detail-rail", Question.RAIL_JOINT),
  FOOTING("detail-footing", Question.BASE_JOINT);

  private final String word;
  private final Question joint;

  DetailDrawing(String word, Question joint) {
    this.word = word;
    this.joint = joint;
  }

  /** The name of its file, without the ending. */
  public String word() {
    return word;
  }

  /** What holds it together; a structure may need nothing there. */
  public Question joint() {
    return joint;
  }
}

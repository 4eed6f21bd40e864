package org.scantling.batch;

/**
 * The answer to one line.
 *
 * @param line the line that is answered, from 1
 * @param json the answer on one line, without its end
 */
public record LineAnswer(int line, String json, Kind kind) {
  /** How a line ended. */
  public enum Kind {
    /** With a structure, or with why there is none inside the rules. */
    ANSWERED,
    /** Something is wrong with it. */
    WRONG,
    /** The program failed on it. */
    FAULT
  }
}

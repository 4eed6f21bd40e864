package org.scantling.intake;

import java.util.OptionalInt;

/**
 * One thing wrong with an input file.
 *
 * @param file the file as the user named it, or the {@code --set} option
 * @param line the line, counted from 1, where there is one
 * @param field the path of the field, such as {@code walkway.clear-width}
 * @param found what stands there
 * @param accepted what would be accepted, as it follows "must be"
 * @param advice a likely remedy as a sentence, or empty
 */
public record Problem(
    String file, OptionalInt line, String field, String found, String accepted, String advice) {

  /** How what was found begins where nothing was. */
  static final String MISSING = "(missing: ";

  Problem withAdvice(String sentence) {
    return new Problem(file, line, field, found, accepted, sentence);
  }

  /** The problem as one line: {@code file:line: field: found must be accepted. Maybe ...}. */
  public String text() {
    String place = line.isPresent() ? file + ":" + line.getAsInt() : file;
    String remedy = advice.isEmpty() ? "" : " " + advice;
    return place + ": " + field + ": " + found + " must be " + accepted + "." + remedy;
  }
}

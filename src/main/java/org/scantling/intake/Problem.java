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
 * @param missing true where something was to stand that does not
 */
public record Problem(
    String file,
    OptionalInt line,
    String field,
    String found,
    String accepted,
    String advice,
    boolean missing) {

  Problem withAdvice(String sentence) {
    return new Problem(file, line, field, found, accepted, sentence, missing);
  }

  /** The problem as one line: {@code file:line: field: found must be accepted. Maybe ...}. */
  public String text() {
    String place = line.isPresent() ? file + ":" + line.getAsInt() : file;
    return said("problem", place);
  }

  /** The same without its place, of a file that is not written yet. */
  public String placeless() {
    return said("problem.placeless", "");
  }

  /** The same without its field, for whoever has asked for that one value. */
  String ofValue() {
    return said("problem.value", "");
  }

  private String said(String saying, String place) {
    return ProblemPhrases.say(
        saying,
        "place",
        place,
        "field",
        field,
        "found",
        found,
        "accepted",
        accepted,
        "advice",
        advice);
  }
}

package org.scantling.words;

import java.util.List;
import java.util.Map;
import org.scantling.reasons.Question;

/**
 * What a question is called and where it shows.
 *
 * @param section the part of a report it belongs to
 * @param line the line of the then-and-now table that it shares, or empty
 * @param cell how its value stands in that line
 * @param builder its name for builder and engineer
 * @param client what it means to the client, as the subject of a sentence
 * @param names further words by which people ask for it, singular
 * @param path where the site file may state it, or empty
 * @param follows true where it only follows by measure from other answers
 * @param safety true where it must be spoken of even when nothing changed
 */
public record SubjectRow(
    Question question,
    String section,
    String line,
    Cell cell,
    String builder,
    String client,
    List<String> names,
    String path,
    boolean follows,
    boolean safety) {

  /**
   * How a value stands in its line, such as {@code of {value}}.
   *
   * @param text with {value} for the value
   */
  public record Cell(String text) {
    public String of(String value) {
      return text.replace("{value}", value);
    }
  }

  static SubjectRow read(Map<String, String> row) {
    return new SubjectRow(
        Question.of(row.get("question")),
        row.get("section"),
        row.get("line"),
        new Cell(row.get("cell")),
        row.get("builder"),
        row.get("client"),
        List.of(row.get("names").split(";")),
        row.get("path"),
        row.get("follows").equals("yes"),
        row.get("safety").equals("yes"));
  }

  /** Its name for a reader. */
  public String label(Reader reader) {
    return reader == Reader.CLIENT ? client : builder;
  }
}

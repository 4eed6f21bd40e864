package org.scantling.visit;

import java.util.Optional;
import org.scantling.sayings.WordRow;

/**
 * A question of a visit: a row of rules/words/visit-questions.csv.
 *
 * @param id its name, by which answers are kept
 * @param kind which visit it belongs to
 * @param section the part of the visit
 * @param path the key of the file that the answer goes to, or empty
 * @param asks what kind of answer it takes
 * @param when when it is asked
 * @param question the question
 * @param why why it matters
 * @param more what helps to answer it
 * @param unit the units that are usual, or empty
 * @param usual what an empty line means: an answer, {@code -} for leaving it out, or nothing
 * @param source where that comes from
 * @param usualIsWritten true where the file says it all the same
 * @param note what the key is, as the written file says beside it
 */
public record VisitRow(
    String id,
    VisitKind kind,
    String section,
    String path,
    AskedAs asks,
    AskedWhen when,
    String question,
    String why,
    String more,
    String unit,
    Optional<String> usual,
    String source,
    boolean usualIsWritten,
    String note) {
  static final String LEFT_OUT = "-";

  static VisitRow of(WordRow row, UsualAnswers usual) {
    String id = row.cell("id");
    try {
      UsualAnswers.Usual answer = usual.of(row.cell("default"), row.cell("source"));
      return new VisitRow(
          id,
          VisitKind.of(row.cell("visit")),
          row.cell("section"),
          row.cell("path"),
          AskedAs.of(row.cell("asks")),
          AskedWhen.parse(row.cell("when")),
          row.cell("question"),
          row.cell("why"),
          row.cell("more"),
          row.cell("unit"),
          answer.answer(),
          answer.source(),
          answer.written(),
          row.cell("note"));
    } catch (IllegalArgumentException | IllegalStateException wrong) {
      throw new IllegalStateException(
          "rules/words/visit-questions.csv: " + id + ": " + wrong.getMessage(), wrong);
    }
  }

  /** What an empty line means, in words; there must be something. */
  public String usualSaid() {
    String answer = usual.orElseThrow();
    if (answer.equals(LEFT_OUT)) {
      return source;
    }
    return source.isEmpty() ? answer : answer + " (" + source + ")";
  }

  boolean hasPath() {
    return !path.isEmpty();
  }
}

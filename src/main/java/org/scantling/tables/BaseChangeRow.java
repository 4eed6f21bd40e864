package org.scantling.tables;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/**
 * What tells one base from another on a site. The rows stand in the order in which they weigh: a
 * later one counts only between bases that are alike in all before it.
 *
 * @param counts how it is counted
 * @param questions what is counted
 * @param stepIn of what is counted in whole steps, the step, inches
 * @param statement what it counts, in trade words
 */
public record BaseChangeRow(
    String id,
    Counts counts,
    List<Question> questions,
    OptionalDouble stepIn,
    String statement,
    Source source,
    String note)
    implements TableRow {

  /** How a row counts. */
  public enum Counts {
    /** 1 for a base that leads to no structure. */
    REFUSED,
    /** Of such a base, what is asked over what is allowed where it came closest. */
    OVER,
    /** Answers that are not as in the base. */
    CHANGED,
    /** Answers that had to be stronger than the usual ones, of what no base tells. */
    STRONGER,
    /** 1 for a base without a record. */
    UNPROVEN,
    /** Numbers that are greater here than where the base has stood, or are not known there. */
    HARSHER,
    /** How far numbers are from those of the base, whichever way, together. */
    APART,
    /** The place in the site file. */
    NAMED;

    /** False for a word where amounts are compared. */
    boolean counts(Question question) {
      boolean amount = question.numeric() || question.counted();
      return amount || (this != HARSHER && this != APART);
    }

    String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  public BaseChangeRow {
    questions = List.copyOf(questions);
  }

  static BaseChangeRow read(Row row) {
    String word =
        row.oneOf("counts", Stream.of(Counts.values()).map(Counts::word).toArray(String[]::new));
    Counts counts = Counts.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    return new BaseChangeRow(
        row.text("id"),
        counts,
        row.optional("questions").isEmpty()
            ? List.of()
            : row.list("questions").stream()
                .map(each -> row.question("questions", each, counts::counts))
                .toList(),
        row.optionalNumber("step_in"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }
}

package org.scantling.tables;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/**
 * A proportion by which one sees that a structure is of the same family as its base.
 *
 * @param of what is measured
 * @param dimension which dimension of it
 * @param to against what; nothing where it need only be the same
 * @param statement the proportion, in trade words
 */
public record LookRow(
    String id,
    Question of,
    Dimension dimension,
    Optional<Question> to,
    String statement,
    Source source,
    String note)
    implements TableRow {

  /** What of an answer is measured. */
  public enum Dimension {
    /** The number that it is. */
    LENGTH,
    /** How thick the timber is. */
    BREADTH,
    /** How deep the timber is. */
    DEPTH,
    /** Nothing: it is the same or it is not. */
    SAME;

    /** True for a question whose answer has that dimension. */
    boolean measures(Question question) {
      return switch (this) {
        case LENGTH -> question.numeric() && question.unit() == Unit.INCH;
        case BREADTH, DEPTH -> question.attribute().equals("size");
        case SAME -> true;
      };
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static LookRow read(Row row) {
    String word =
        row.oneOf(
            "dimension", Stream.of(Dimension.values()).map(Dimension::word).toArray(String[]::new));
    Dimension dimension = Dimension.valueOf(word.toUpperCase(Locale.ROOT));
    return new LookRow(
        row.text("id"),
        row.question("of", row.text("of"), dimension::measures),
        dimension,
        dimension == Dimension.SAME
            ? Optional.empty()
            : Optional.of(row.question("to", row.text("to"), Dimension.LENGTH::measures)),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }
}

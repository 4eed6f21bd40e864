package org.scantling.tables;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/**
 * A structural check: how hard a thing may be worked, and how it is told.
 *
 * @param limitRatio greatest demand over capacity
 * @param easedByRecord whether the record of a base that has stood may ease the limit: how deep
 *     posts stand and how far they sway, with the leaves that push them, never the strength of a
 *     member
 * @param unit of demand and capacity
 * @param nature what it keeps from happening
 * @param larger of a joint that nothing holds: the size that is tried larger, where that gives its
 *     fasteners room
 * @param clientWords what passing means to the client
 * @param builderWords what is checked, for the builder
 */
public record CheckRow(
    String id,
    double limitRatio,
    boolean easedByRecord,
    Unit unit,
    CheckNature nature,
    Optional<Question> larger,
    String clientWords,
    String builderWords,
    Source source,
    String note)
    implements TableRow {
  private static final List<Question> LARGER = List.of(Question.HEADER_SIZE, Question.POST_SIZE);

  static CheckRow read(Row row) {
    if (row.positive("limit_ratio") > 1) {
      throw row.refuse("limit_ratio", RefusalWords.say("checks.limit"));
    }
    return new CheckRow(
        row.text("id"),
        row.positive("limit_ratio"),
        eased(row),
        row.unit(),
        CheckNature.read(row),
        larger(row),
        row.text("client_words"),
        row.text("builder_words"),
        row.source(),
        row.optional("note"));
  }

  private static Optional<Question> larger(Row row) {
    String id = row.optional("larger");
    if (id.isEmpty()) {
      return Optional.empty();
    }
    for (Question size : LARGER) {
      if (size.id().equals(id)) {
        return Optional.of(size);
      }
    }
    throw row.refuse("larger", RefusalWords.say("checks.larger"));
  }

  /** Depths and sways are in inches; strength is a stress, a force or a share. */
  private static boolean eased(Row row) {
    boolean eased = row.yes("eased_by_record");
    if (eased && row.unit() != Unit.INCH) {
      throw row.refuse("eased_by_record", RefusalWords.say("checks.eased"));
    }
    return eased;
  }
}

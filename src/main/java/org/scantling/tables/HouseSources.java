package org.scantling.tables;

import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/**
 * The source of a row that a house wrote: whatever its {@code kind} cell says, the house answers
 * for it. What it cites and what it stands in place of is said as well.
 */
final class HouseSources extends Sources {
  private final Sources all;
  private final String[] own;
  private final String instead;
  private final HouseNote note;

  /**
   * @param all every citation, the house's own included
   * @param own the cells that the house itself wrote
   * @param instead the numbers and the source of the row that is overridden, or empty
   * @param note what the house says of it
   */
  HouseSources(Sources all, String[] own, String instead, HouseNote note) {
    super(all.citations());
    this.all = all;
    this.own = own;
    this.instead = instead;
    this.note = note;
  }

  @Override
  Source of(Row merged, String prefix) {
    Row row = merged.with(own);
    if (!row.optional(prefix.concat("kind")).isEmpty()) {
      kind(row, prefix);
    }
    if (!row.optional(prefix.concat("status")).isEmpty()) {
      row.oneOf(prefix.concat("status"), STATUSES);
    }
    boolean cites = !row.optional(prefix.concat("source")).isEmpty();
    String text =
        RefusalWords.say(
            "house-rule",
            "file",
            row.fileName(),
            "who",
            note.who(),
            "why",
            note.why(),
            "basis",
            note.basis(),
            "citation",
            cites ? all.citation(row, prefix) : "",
            "where",
            row.optional(prefix.concat("where")),
            "instead",
            instead);
    return new Source(SourceKind.HOUSE_RULE, text, false);
  }
}

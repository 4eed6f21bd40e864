package org.scantling.tables;

import org.scantling.reasons.Source;

/** One row of a table: a stable id and where its values come from. */
public interface TableRow {
  /** The name by which rules, house rules and outputs mean this row; never changes. */
  String id();

  /** What stands behind the values of this row. */
  Source source();
}

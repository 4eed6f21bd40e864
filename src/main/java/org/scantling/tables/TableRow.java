package org.scantling.tables;

import org.scantling.reasons.Cited;

/**
 * One row of a table: a stable id, by which rules, house rules and outputs mean it, and the source
 * of its values. A row is a fact that rules can read.
 */
public interface TableRow extends Cited {
  /** Of an id in parts, all but the last: what the rows beside it have in common. */
  default String group() {
    return id().substring(0, Math.max(0, id().lastIndexOf('.')));
  }

  /** Of an id in parts, the last: which of a group it is. */
  default String part() {
    return id().substring(id().lastIndexOf('.') + 1);
  }
}

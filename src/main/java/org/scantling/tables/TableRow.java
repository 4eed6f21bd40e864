package org.scantling.tables;

import org.scantling.reasons.Cited;

/**
 * One row of a table: a stable id, by which rules, house rules and outputs mean it, and the source
 * of its values. A row is a fact that rules can read.
 */
public interface TableRow extends Cited {}

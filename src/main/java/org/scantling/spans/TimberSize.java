package org.scantling.spans;

import org.scantling.tables.SizeRow;

/**
 * A size as a span table names it.
 *
 * @param name such as 2x8, or 3-2x8 for three boards
 * @param plies boards side by side
 */
public record TimberSize(String name, int plies, SizeRow row) {}

/**
 * The numbers of the trade: CSV tables read into typed, immutable rows, each with its source, and a
 * house's own rows laid over them.
 *
 * <p>A table is read when it is first asked for. A hole, a duplicate, an unknown unit, kind, source
 * or status, or anything that is not a number is refused with file, line and column.
 *
 * <p>May depend on: quantity, reasons, sayings. Entry point: {@link org.scantling.tables.Tables}.
 */
@NullMarked
package org.scantling.tables;

import org.jspecify.annotations.NullMarked;

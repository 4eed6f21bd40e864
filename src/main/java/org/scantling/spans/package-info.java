/**
 * Span tables: how far a size reaches before the first of the program's own checks stops it, under
 * stated loads and assumptions. Works nothing out itself: every check is one of {@code confirm}.
 *
 * <p>May depend on: quantity, reasons, loads, tables, confirm. Entry point: {@link
 * org.scantling.spans.SpanTables}.
 */
@NullMarked
package org.scantling.spans;

import org.jspecify.annotations.NullMarked;

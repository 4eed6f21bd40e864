/**
 * Many sites, one a line: the lines of a file of any length taken in turn, each answered on a line
 * of its own, and a file of answers that goes on where an earlier run ended.
 *
 * <p>May depend on: concurrent, reasons, sayings, tables, intake, words, print. Entry point: {@link
 * org.scantling.batch.Batch}.
 */
@NullMarked
package org.scantling.batch;

import org.jspecify.annotations.NullMarked;

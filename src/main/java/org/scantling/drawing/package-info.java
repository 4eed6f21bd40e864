/**
 * Drawings of a proposal: what stands where, as a client looks at it and a builder works from it.
 *
 * <p>Draws the finished pieces and the set-out of the lists, so that a drawing cannot differ from
 * what is cut. A scene holds what is seen, in inches of the structure; a paper lays it out at a
 * scale, with its figures clear of each other; the writer makes the file.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables, shop. Entry point: {@link
 * org.scantling.drawing.Drawings}.
 */
@NullMarked
package org.scantling.drawing;

import org.jspecify.annotations.NullMarked;

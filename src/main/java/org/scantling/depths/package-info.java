/**
 * Tables of hole depths: how deep the posts of a decided structure stand over frost, wind, soil and
 * fill. Works nothing out itself: every depth is the answer of {@code engine}, by the rules that a
 * proposal goes by.
 *
 * <p>May depend on: quantity, design, reasons, answers, engine, search. Entry point: {@link
 * org.scantling.depths.DepthTables}.
 */
@NullMarked
package org.scantling.depths;

import org.jspecify.annotations.NullMarked;

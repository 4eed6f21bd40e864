/**
 * From proposal to yard and ground: the pieces with their cuts, how they come out of the lengths
 * sold, what to buy, where the holes go, in which order it is built, what the climbers hold on to.
 *
 * <p>Reads a finished proposal and decides nothing: what is missing there is told as an open point.
 * Lengths in inches, as the tape rounds them: to a sixteenth, or to a millimetre where the timber
 * is metric.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables, cutting, words, and the pages of
 * print. Entry point: {@link org.scantling.shop.Lists}.
 */
@NullMarked
package org.scantling.shop;

import org.jspecify.annotations.NullMarked;

/**
 * Numbers with units at the edges: lengths in trade fractions and metric, measures for people, and
 * the one demand-against-capacity record.
 *
 * <p>May depend on: nothing of ours. Entry points: {@link org.scantling.quantity.Length}, {@link
 * org.scantling.quantity.QuantityKind}, {@link org.scantling.quantity.MeasureText}, {@link
 * org.scantling.quantity.Check}.
 */
@NullMarked
package org.scantling.quantity;

import org.jspecify.annotations.NullMarked;

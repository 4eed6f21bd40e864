/**
 * One-dimensional cutting stock: which lengths to buy and how to cut them, at the least cost, with
 * a bound that says how far from the least the answer can be.
 *
 * <p>Lengths are whole ticks (a sixteenth of an inch, a millimetre: the caller's choice) and costs
 * whole units (ticks bought, cents), so that no answer hangs on a rounding.
 *
 * <p>May depend on: nothing of ours. Entry point: {@link org.scantling.cutting.CuttingStock}.
 */
@NullMarked
package org.scantling.cutting;

import org.jspecify.annotations.NullMarked;

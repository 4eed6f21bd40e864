/**
 * What sawn timber can carry, by allowable stress design: adjusted design values, beams, notches,
 * bearing, posts, and the nails, screws and bolts that hold them together.
 *
 * <p>Pure functions of numbers. Tabulated values (design values, load duration, wet service, size
 * and so on) come in as records; only constants that belong to an equation stand here. Each check
 * returns its working together with one {@link org.scantling.quantity.Check}.
 *
 * <p>May depend on: {@code org.scantling.quantity}. Entry points: {@link
 * org.scantling.timber.AdjustedValues} for members, {@link org.scantling.timber.YieldLimit} for
 * fasteners.
 */
@NullMarked
package org.scantling.timber;

import org.jspecify.annotations.NullMarked;

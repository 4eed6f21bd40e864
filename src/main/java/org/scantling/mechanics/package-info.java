/**
 * Beams, frames and rectangular sections: pure numbers, linear elastic, no timber, no rules.
 *
 * <p>May depend on: {@code quantity}. Entry points: {@link org.scantling.mechanics.ContinuousBeam}
 * for a header or crossbeam over its supports, {@link org.scantling.mechanics.Frame} for posts,
 * headers and braces acting together, {@link org.scantling.mechanics.Sway} for the growth of sway
 * under vertical load.
 *
 * <p>Signs of beams: loads and deflections count positive downwards, reactions upwards; a sagging
 * moment is positive; shear is positive where the part to the left is pushed up.
 */
@NullMarked
package org.scantling.mechanics;

import org.jspecify.annotations.NullMarked;

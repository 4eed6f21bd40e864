/**
 * What the ground can do for a post: hold it upright, bear it, hold it down, and freeze around it.
 *
 * <p>Pure functions of numbers: soil values and surface factors are handed in by the caller, and
 * every result keeps its working.
 *
 * <p>May depend on: {@code org.scantling.quantity}. Entry points: {@link
 * org.scantling.ground.NonConstrainedEmbedment}, {@link org.scantling.ground.VerticalBearing},
 * {@link org.scantling.ground.Uplift}, {@link org.scantling.ground.Sliding}, {@link
 * org.scantling.ground.EmbeddedPost}, {@link org.scantling.ground.FrostDepth}.
 */
@NullMarked
package org.scantling.ground;

import org.jspecify.annotations.NullMarked;

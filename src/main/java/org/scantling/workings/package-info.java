/**
 * The steps of a calculation as an engineer goes over them by hand: which case is the hardest, and
 * the lines that its kernels tell, under a heading.
 *
 * <p>Entry point: {@link org.scantling.workings.LoadTrace}.
 */
@NullMarked
package org.scantling.workings;

import org.jspecify.annotations.NullMarked;

/**
 * The problem that a site poses: its demands as facts, the sizes and the numbers of bays that may
 * be tried, a design that is given, and what of it cannot be put together.
 *
 * <p>Entry point: {@link org.scantling.problem.DesignProblem}.
 */
@NullMarked
package org.scantling.problem;

import org.jspecify.annotations.NullMarked;

/**
 * Candidates held against the kernels: every check of a size, a joint or a way of blocking, with
 * all else as answered so far, and the geometry and the loads that these share.
 *
 * <p>Entry point: {@link org.scantling.candidates.CheckContext}.
 */
@NullMarked
package org.scantling.candidates;

import org.jspecify.annotations.NullMarked;

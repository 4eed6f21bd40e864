/**
 * Questions put to the whole engine many times over: at which demand a choice turns, and what would
 * have to be asked otherwise to get another answer.
 *
 * <p>Entry points: {@link org.scantling.search.ThresholdSearch} and {@link
 * org.scantling.search.LeastChangeSearch}.
 */
@NullMarked
package org.scantling.search;

import org.jspecify.annotations.NullMarked;

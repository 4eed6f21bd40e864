/** Whole structures that could be built on a site instead of the proposed one, compared. */
@NullMarked
package org.scantling.options;

import org.jspecify.annotations.NullMarked;

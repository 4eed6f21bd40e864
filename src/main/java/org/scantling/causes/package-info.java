/**
 * Which demands and which other changes are to blame for a change, or for there being no answer.
 */
@NullMarked
package org.scantling.causes;

import org.jspecify.annotations.NullMarked;

/**
 * Sentences out of the folder rules/words, with their blanks filled: for every package that has
 * something to say, the tables too.
 *
 * <p>May depend on: nothing. Entry point: {@link org.scantling.sayings.Sayings}.
 */
@NullMarked
package org.scantling.sayings;

import org.jspecify.annotations.NullMarked;

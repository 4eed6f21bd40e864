/**
 * What is answered so far, and what it starts from: the answers of a run, those that a given design
 * fixes, what the base has, the sizes that are sold, what has changed, and what was worked out
 * before.
 */
@NullMarked
package org.scantling.answers;

import org.jspecify.annotations.NullMarked;

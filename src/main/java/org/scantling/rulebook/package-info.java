/**
 * The rule base as something to read: every rule with what it reads and finds, its numbers, its
 * cases and its words, from the files it is written in; and the proof that it is complete. Runs no
 * rule.
 *
 * <p>May depend on: quantity, reasons, sayings, tables, words. Entry point: {@link
 * org.scantling.rulebook.Rulebook}.
 */
@NullMarked
package org.scantling.rulebook;

import org.jspecify.annotations.NullMarked;

/**
 * The words of the product for three readers: what a thing is called, how an option and a number
 * are said, and the sentence that goes with every rule.
 *
 * <p>All words come from the folder rules/words and the words of the tables; a new rule or question
 * needs rows and no Java.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables. Entry point: {@link
 * org.scantling.words.Words}.
 */
@NullMarked
package org.scantling.words;

import org.jspecify.annotations.NullMarked;

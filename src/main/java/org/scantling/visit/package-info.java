/**
 * A visit as questions and answers: which question comes next, what an answer is taken for, and the
 * text of the file that comes of it. Asks nobody and touches no file; the commands do that.
 *
 * <p>The questions are rows of {@code rules/words/visit-questions.csv}, in the order in which they
 * are asked. Single answers are held against the readers of the files, so that nothing is accepted
 * here which they would refuse.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables, intake, words. Entry points: {@link
 * org.scantling.visit.Visit}, {@link org.scantling.visit.VisitText}.
 */
@NullMarked
package org.scantling.visit;

import org.jspecify.annotations.NullMarked;

/**
 * Why: questions, findings, decisions and reasons, as values that can be compared.
 *
 * <p>A {@link org.scantling.reasons.Question} is a thing to be decided; a rule inserts a {@link
 * org.scantling.reasons.Finding} about it; the engine's resolver turns findings into a {@link
 * org.scantling.reasons.Decision}. The decision <em>is</em> its explanation.
 *
 * <p>May depend on: quantity, design. Entry points: Question, Finding, Decision.
 */
@NullMarked
package org.scantling.reasons;

import org.jspecify.annotations.NullMarked;

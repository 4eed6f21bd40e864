/**
 * What the rules of a phase are told: quantities that follow from the answers, and every option
 * with its checks.
 *
 * <p>Entry point: {@link org.scantling.facts.PhaseFacts}.
 */
@NullMarked
package org.scantling.facts;

import org.jspecify.annotations.NullMarked;

package org.scantling.reasons;

/**
 * An answer that is not as in the base and that moved the number which governs a decision.
 *
 * @param question what was answered otherwise
 * @param shareRatio what share of the governing number goes when that answer alone is put back as
 *     the base has it; above 0, at most 1
 */
public record Contribution(Question question, double shareRatio) {}

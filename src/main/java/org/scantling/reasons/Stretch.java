package org.scantling.reasons;

/**
 * Neighbouring values of a demand that lead to one choice.
 *
 * @param first the least of them
 * @param last the greatest of them
 */
public record Stretch(Outcome first, Outcome last, Choice choice) {}

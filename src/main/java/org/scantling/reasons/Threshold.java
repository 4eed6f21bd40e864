package org.scantling.reasons;

/**
 * The value of a site demand up to which a choice holds, and what comes next.
 *
 * @param question what was chosen
 * @param demand along which it was searched
 * @param up true towards more of the demand, or later words of its table
 * @param at the last value at which today's choice holds
 * @param beyond the next value, at which it no longer does
 * @param here today's choice, as decided at {@code at}
 * @param there what is decided at {@code beyond}
 */
public record Threshold(
    Question question,
    Demand demand,
    boolean up,
    Outcome at,
    Outcome beyond,
    Choice here,
    Choice there) {}

package org.scantling.reasons;

/**
 * One thing that a site asks for, asked otherwise.
 *
 * @param demand what is asked otherwise
 * @param setting what {@code --set} takes to change it in this site's file
 * @param from its value now: what the file states, else what was decided
 * @param to the value that is tried instead
 * @param shareRatio the share of the demand's range that is given up, by its weight
 * @param choice true where somebody chooses it, false where the place sets it
 */
public record Change(
    Demand demand, String setting, Outcome from, Outcome to, double shareRatio, boolean choice) {}

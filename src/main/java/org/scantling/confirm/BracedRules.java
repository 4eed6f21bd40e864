package org.scantling.confirm;

/**
 * What the checks of a braced walk need besides the usual limits.
 *
 * @param heldFactor K_e of a post or brace held at both ends
 * @param holeIn width of the bolt hole that is taken off a section
 * @param eccentricityRatio share of a post's breadth by which its load misses the centre
 * @param swayShareRatio share of the load at which the walk leans over by itself
 */
public record BracedRules(
    double heldFactor, double holeIn, double eccentricityRatio, double swayShareRatio) {}

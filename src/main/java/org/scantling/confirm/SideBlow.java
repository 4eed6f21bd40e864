package org.scantling.confirm;

/**
 * Wind on the face of one beam.
 *
 * @param lbPerIn along the whole of it, strength level
 * @param flatUseFactor C_fu of its size, bent the narrow way
 */
public record SideBlow(double lbPerIn, double flatUseFactor) {}

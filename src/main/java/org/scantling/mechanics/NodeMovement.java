package org.scantling.mechanics;

/**
 * How far a node of a frame moves.
 *
 * @param xIn sideways, in
 * @param yIn upwards, in
 * @param turnRad anticlockwise, radians; 0 where every member is hinged to the node
 */
public record NodeMovement(double xIn, double yIn, double turnRad) {}

package org.scantling.mechanics;

/**
 * What a support does to the frame.
 *
 * @param xLb force sideways, lb
 * @param yLb force upwards, lb
 * @param momentInLb moment, anticlockwise, in·lb
 */
public record NodeForce(double xLb, double yLb, double momentInLb) {}

package org.scantling.shop;

/**
 * What the maker of a steel part must rate it for, each joint.
 *
 * @param liftLb from below
 * @param sideLb sideways
 * @param downLb from above; 0 where the timber lies on timber
 */
public record Rating(double liftLb, double sideLb, double downLb) {}

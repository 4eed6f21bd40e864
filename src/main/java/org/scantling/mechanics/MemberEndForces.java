package org.scantling.mechanics;

/**
 * The forces that act on the two ends of a frame member, in the member's own axes: x from start to
 * end, y to its left, moments anticlockwise. A member in compression has a positive start axial
 * force.
 */
public record MemberEndForces(
    double startAxialLb,
    double startShearLb,
    double startMomentInLb,
    double endAxialLb,
    double endShearLb,
    double endMomentInLb) {}

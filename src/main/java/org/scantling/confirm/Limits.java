package org.scantling.confirm;

import org.scantling.loads.DurationFactors;

/**
 * The limits and factors that checks need, filled from the tables.
 *
 * @param duration C_D by kind of load
 * @param creepFactor how much the permanent part of a deflection grows, K_cr
 * @param totalDeflectionDivisor span over total deflection, such as 180
 * @param passingDeflectionDivisor span over live or snow deflection, such as 240
 * @param cantileverFactor K_e of a post held by the ground and free at the top
 * @param straightnessFactor c of a sawn column
 * @param driftShareRatio sway at the header over its height
 * @param eccentricityShareRatio how far the load on a post misses its centre, over its breadth
 * @param pairShareRatio share of what a pair of boards carries that the harder worked board takes
 */
public record Limits(
    DurationFactors duration,
    double creepFactor,
    double totalDeflectionDivisor,
    double passingDeflectionDivisor,
    double cantileverFactor,
    double straightnessFactor,
    double driftShareRatio,
    double eccentricityShareRatio,
    double pairShareRatio) {}

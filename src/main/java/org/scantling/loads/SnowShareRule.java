package org.scantling.loads;

/**
 * The house's judgement on how much snow an open top keeps; no standard gives a reduction for
 * openings, so the numbers are common practice and belong to a table.
 *
 * @param minimumShareRatio the share never gone under, 0 to 1
 * @param bridgingGapIn gaps up to this width are taken as bridged by snow, in, zero or more
 * @param fullAskedFor true where the full roof snow is asked for whatever the gaps
 */
public record SnowShareRule(double minimumShareRatio, double bridgingGapIn, boolean fullAskedFor) {
  public SnowShareRule {
    Argument.share("minimum snow share", minimumShareRatio);
    Argument.zeroOrMore("bridging gap (in)", bridgingGapIn);
  }
}

package org.scantling.reasons;

import org.scantling.quantity.Measure;

/**
 * How much of one kind of change a base would need on a site.
 *
 * @param what the row of base-changes.csv that counts it
 * @param measure how much; 0 where nothing of that kind changes
 */
public record BaseCount(String what, Measure measure) {}

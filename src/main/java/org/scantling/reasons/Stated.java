package org.scantling.reasons;

/** What the site file states, as opposed to what it leaves to the rules. */
public record Stated(Demand demand, Outcome value) {}

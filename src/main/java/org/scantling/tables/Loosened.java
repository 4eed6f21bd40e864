package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * A number of a standard that a house takes to the side that is not the safe one, which it may only
 * where it says on what that rests.
 *
 * @param id the row
 * @param what which number it is, in trade words
 * @param ours what the standard has, with its unit
 * @param theirs what the house takes instead
 * @param standard the source of ours
 * @param who who answers for it; empty where nobody is named
 * @param why why it is so; empty where nothing is said
 * @param basis on what it rests
 * @param source the row of the house
 */
public record Loosened(
    String id,
    String what,
    String ours,
    String theirs,
    String standard,
    String who,
    String why,
    String basis,
    Source source)
    implements TableRow {}

package org.scantling.shop;

/**
 * A hole through a piece.
 *
 * @param face where the bit goes in
 * @param atIn from the first end
 * @param offIn from the middle line of the face: positive towards the top edge on a side, and on
 *     top to the left, looking from the first end
 * @param diameterIn of the bit
 * @param what goes through it
 */
public record Bore(String face, double atIn, double offIn, double diameterIn, String what) {}

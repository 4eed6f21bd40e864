package org.scantling.shop;

import java.util.OptionalLong;

/**
 * What a small change of length spares at the yard, all its pieces together, spare sticks left out.
 *
 * @param what the pieces
 * @param size nominal size
 * @param fromIn length of each as it was first wanted
 * @param toIn length of each as it is cut
 * @param lengthIn of timber that need not be bought
 * @param joint true where pieces of the length first wanted are longer than the yard sells and
 *     would have to be joined or ordered
 * @param cents what that would have cost, where the yard's list says
 */
public record Saving(
    String what,
    String size,
    double fromIn,
    double toIn,
    double lengthIn,
    boolean joint,
    OptionalLong cents) {}

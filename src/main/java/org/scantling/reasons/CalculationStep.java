package org.scantling.reasons;

import org.scantling.quantity.Measure;

/**
 * One step of the working behind a load or a stress, with every number that went into it, so that
 * it can be gone over by hand.
 *
 * @param id what is worked, such as {@code wind.across.pressure}; the formula is the row of that id
 * @param result what it comes to, at the level of the velocity pressure where it is a wind load
 * @param evidence what went into it, by name
 * @param source the clause of the formula
 */
public record CalculationStep(String id, Measure result, Evidence evidence, Source source)
    implements Cited {}

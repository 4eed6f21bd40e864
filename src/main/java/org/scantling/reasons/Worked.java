package org.scantling.reasons;

/**
 * A number that a kernel worked out for a question, before any rule has judged it.
 *
 * @param id what it is, such as {@code snow.flat}
 * @param question the question it bears on
 * @param number the result, in the unit of the question
 * @param evidence the inputs, by name
 * @param source the clause of the formula
 */
public record Worked(String id, Question question, double number, Evidence evidence, Source source)
    implements Cited {}

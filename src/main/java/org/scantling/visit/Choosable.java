package org.scantling.visit;

/**
 * One of the words that answer a question.
 *
 * @param word as it is kept
 * @param says how to tell it from the others
 */
public record Choosable(String word, String says) {}

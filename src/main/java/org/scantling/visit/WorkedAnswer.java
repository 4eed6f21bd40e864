package org.scantling.visit;

/**
 * An answer worked out from others.
 *
 * @param answer as it would be typed
 * @param how how it was worked, in words
 */
public record WorkedAnswer(String answer, String how) {}

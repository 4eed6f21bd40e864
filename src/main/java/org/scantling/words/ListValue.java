package org.scantling.words;

import org.scantling.reasons.Source;

/**
 * One of the words that a closed list of the site file accepts.
 *
 * @param value as it is typed
 * @param name what it is, in trade words
 * @param how how to tell it on the spot; empty where a house added the word
 * @param source of how it is told
 */
public record ListValue(String value, String name, String how, Source source) {}

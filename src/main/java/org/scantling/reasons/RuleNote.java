package org.scantling.reasons;

/**
 * What a rule says about itself.
 *
 * @param id never changes
 * @param phase where it fires
 * @param name question and outcome in words
 * @param source what stands behind it when it leans on no table row
 */
public record RuleNote(String id, Phase phase, String name, Source source) {}

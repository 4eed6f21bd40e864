package org.scantling.confirm;

import java.util.function.Function;
import org.scantling.reasons.Source;

/**
 * What every joint check needs.
 *
 * @param factors of fasteners outdoors
 * @param limits load duration among them
 * @param sources source of a check by its id
 */
public record JointRules(JointFactors factors, Limits limits, Function<String, Source> sources) {}

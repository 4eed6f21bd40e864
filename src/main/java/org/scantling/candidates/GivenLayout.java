package org.scantling.candidates;

import java.util.Optional;
import org.scantling.design.Bays;

/**
 * What of the layout is given and answers no question.
 *
 * @param slopeRatio fall of the ground over its length in plan
 * @param told the bays, where they are not so many of one length: the site or the given design
 *     tells them one by one, or posts have to move
 */
public record GivenLayout(double slopeRatio, Optional<Bays> told) {}

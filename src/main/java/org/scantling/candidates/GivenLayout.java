package org.scantling.candidates;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Bays;
import org.scantling.design.CrossFall;

/**
 * What of the layout is given and answers no question.
 *
 * @param slopeRatio fall of the ground over its length in plan
 * @param across how the ground falls from row to row
 * @param rockAtIn depth at which solid rock begins, where any is told of
 * @param told the bays, where they are not so many of one length: the site or the given design
 *     tells them one by one, or posts have to move
 */
public record GivenLayout(
    double slopeRatio, CrossFall across, OptionalDouble rockAtIn, Optional<Bays> told) {}

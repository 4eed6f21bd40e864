package org.scantling.confirm;

import org.scantling.loads.LoadCombination;

/**
 * What a post hands to the base that holds it upright, allowable-stress level.
 *
 * @param momentInLb bending it over
 * @param liftLb pulling the post off it, 0 or more
 * @param sideLb pushing the post sideways off it
 * @param downLb standing on it
 */
record BaseForce(
    LoadCombination combination, double momentInLb, double liftLb, double sideLb, double downLb) {}

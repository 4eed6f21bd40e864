package org.scantling.design;

/**
 * A crossbeam along the walk.
 *
 * @param alongIn its centre, from the centre of the first post; negative on the first tail
 * @param shareRatio what of the widest spacing lies on it: half of the space on either side; of the
 *     first and the last, all of the one beside them
 */
public record CrossbeamPlace(double alongIn, double shareRatio) {}

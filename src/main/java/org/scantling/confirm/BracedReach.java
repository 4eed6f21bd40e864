package org.scantling.confirm;

import java.util.List;

/**
 * What of a braced plane is looked at in one case.
 *
 * @param posts counted from 0
 * @param braces of those posts, by name
 * @param pieces of the beam over and between those posts, its tails where it ends there
 * @param betweenTails the same without tails
 */
record BracedReach(
    List<Integer> posts, List<String> braces, List<String> pieces, List<String> betweenTails) {}

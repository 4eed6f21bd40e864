package org.scantling.confirm;

import java.util.List;
import java.util.function.Supplier;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;

/**
 * A joint under one force: what is checked of it, and how that was worked.
 *
 * @param name of the check, without its role
 * @param told from the fastener to what the joint holds; made when it is asked for
 */
public record JointCase(
    String name, LoadCombination combination, Check check, Supplier<List<JointLines>> told) {}

package org.scantling.mechanics;

import java.util.List;

/** What a frame does under one load case or a combination of cases. */
public final class FrameResult {
  private final Frame frame;
  private final double[] movements;
  private final double[] reactions;
  private final FrameMembers members;

  FrameResult(Frame frame, double[] movements, double[] reactions, FrameMembers members) {
    this.frame = frame;
    this.movements = movements;
    this.reactions = reactions;
    this.members = members;
  }

  /**
   * The sum of several cases, each times its factor: a load combination from unit cases.
   *
   * @param cases results of one call of {@link Frame#solve(List)}
   * @param factors one for each case
   * @throws IllegalArgumentException if the counts differ or the cases come from different calls
   */
  public static FrameResult combine(List<FrameResult> cases, double... factors) {
    if (cases.isEmpty() || cases.size() != factors.length) {
      throw new IllegalArgumentException(
          cases.size() + " cases and " + factors.length + " factors must be as many, 1 or more");
    }
    FrameResult first = cases.get(0);
    double[] movements = new double[first.movements.length];
    double[] reactions = new double[first.reactions.length];
    for (int i = 0; i < factors.length; i++) {
      FrameResult part = cases.get(i);
      if (!part.members.fits(first.members)) {
        throw new IllegalArgumentException(
            "case " + (i + 1) + " must come from the same call of solve as the first");
      }
      // Most of the cases that are solved have no part in one combination.
      if (factors[i] != 0) {
        add(movements, part.movements, factors[i]);
        add(reactions, part.reactions, factors[i]);
      }
    }
    List<FrameMembers> parts = cases.stream().map(each -> each.members).toList();
    return new FrameResult(
        first.frame, movements, reactions, new FrameMembers.Summed(parts, factors.clone()));
  }

  private static void add(double[] sum, double[] part, double factor) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * part[i];
    }
  }

  /** How far a node moves. */
  public NodeMovement movement(String node) {
    int at = 3 * frame.node(node);
    return new NodeMovement(movements[at], movements[at + 1], movements[at + 2]);
  }

  /** What a node's support does to the frame; zero in directions in which it does not hold. */
  public NodeForce reaction(String node) {
    int at = 3 * frame.node(node);
    return new NodeForce(reactions[at], reactions[at + 1], reactions[at + 2]);
  }

  /** Forces, moments and movements along a member. */
  public MemberResult member(String name) {
    return members.of(frame.member(name));
  }
}

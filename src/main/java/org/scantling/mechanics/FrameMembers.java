package org.scantling.mechanics;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** What the members of a frame do, by their place in the frame. */
sealed interface FrameMembers {
  MemberResult of(int member);

  int size();

  /** True for results of one call of solve, which keeps the same places along each member. */
  default boolean fits(FrameMembers other) {
    return size() == other.size() && of(0).fits(other.of(0));
  }

  /** Solved, and all kept. */
  record Solved(List<MemberResult> members) implements FrameMembers {
    public Solved {
      members = List.copyOf(members);
    }

    @Override
    public MemberResult of(int member) {
      return members.get(member);
    }

    @Override
    public int size() {
      return members.size();
    }
  }

  /**
   * The sum of several cases, each times its factor. A member is added up when it is asked for, and
   * only the last few are kept: a long frame has thousands of members, and hundreds of sums of its
   * cases are looked at, one member after the other.
   */
  final class Summed implements FrameMembers {
    private static final int KEPT = 24;

    private record Kept(int member, MemberResult result) {}

    private final List<FrameMembers> cases;
    private final double[] factors;
    private final AtomicReferenceArray<Kept> kept = new AtomicReferenceArray<>(KEPT);

    Summed(List<FrameMembers> cases, double[] factors) {
      this.cases = List.copyOf(cases);
      this.factors = factors;
    }

    @Override
    public MemberResult of(int member) {
      Kept last = kept.get(member % KEPT);
      if (last != null && last.member() == member) {
        return last.result();
      }
      MemberResult sum = sum(member);
      kept.set(member % KEPT, new Kept(member, sum));
      return sum;
    }

    private MemberResult sum(int member) {
      MemberResult sum = cases.get(0).of(member).blank();
      for (int i = 0; i < factors.length; i++) {
        // Most of the cases that are solved have no part in one combination.
        if (Math.abs(factors[i]) > 0) {
          sum.add(cases.get(i).of(member), factors[i]);
        }
      }
      return sum;
    }

    @Override
    public int size() {
      return cases.get(0).size();
    }
  }
}

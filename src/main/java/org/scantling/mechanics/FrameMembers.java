package org.scantling.mechanics;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;

/** What the members of a frame do, by their place in the frame. */
sealed interface FrameMembers {
  MemberResult of(int member);

  /** The cases that were solved together, with the same places along each member. */
  FrameCases together();

  /** True for results of one call of solve. */
  default boolean fits(FrameMembers other) {
    return together() == other.together();
  }

  /**
   * Solved, and kept. A member is worked out when it is asked for: who looks for the worst of a
   * person at many places looks only at what stands near each.
   */
  final class Solved implements FrameMembers {
    private final FrameCases together;
    private final IntFunction<MemberResult> work;
    private final MemberResult[] members;

    /**
     * @param work a pure function, so that two threads that ask at once find the same
     */
    Solved(FrameCases together, int size, IntFunction<MemberResult> work) {
      this.together = together;
      this.work = work;
      this.members = new MemberResult[size];
    }

    @Override
    public MemberResult of(int member) {
      MemberResult known = members[member];
      if (known == null) {
        known = work.apply(member);
        members[member] = known;
      }
      return known;
    }

    @Override
    public FrameCases together() {
      return together;
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
    public FrameCases together() {
      return cases.get(0).together();
    }
  }
}

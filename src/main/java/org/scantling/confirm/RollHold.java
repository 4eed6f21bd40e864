package org.scantling.confirm;

import org.scantling.timber.ToeNail;

/**
 * What the fasteners of one seat hold against a crossbeam that rolls over the lee edge of its
 * underside: each by its pull times its distance from that edge.
 *
 * <p>Source: statics; the slant of the fasteners by NDS, 2018, Figure 12A, from memory.
 */
final class RollHold {
  private RollHold() {}

  /**
   * The moment about the lee edge, wind from the side where the fewer fasteners are.
   *
   * @param hold what they hold against lift, all together
   * @param breadthIn of the crossbeam
   */
  static double momentInLb(JointFix fix, JointHold hold, double breadthIn) {
    int fewer = fix.count() / 2;
    double eachLb = hold.pullLb() / fix.count();
    return switch (fix.way()) {
      case TOE_NAILED, TOE_SCREWED, HOUSED -> {
        double leeIn = Math.min(breadthIn, new ToeNail(fix.reach().lengthIn()).crossingIn());
        double windwardIn = breadthIn - leeIn;
        double most = Math.max(leeIn, windwardIn);
        double least = Math.min(leeIn, windwardIn);
        yield eachLb * (fewer * most + (fix.count() - fewer) * least);
      }
      // Steel on both faces: the part on the lee face has no lever.
      case RATED -> eachLb * fewer * breadthIn;
      // Driven from above down the middle.
      case LAGGED, BOLTED -> hold.pullLb() * breadthIn / 2;
    };
  }
}

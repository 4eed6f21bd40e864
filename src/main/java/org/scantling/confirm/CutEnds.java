package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.SupportForces;

/**
 * The ends of the pieces of a beam that is cut over some of its supports. What stands right over a
 * cut may rest on either piece, so each end is held to all of it.
 */
final class CutEnds {
  private final LoadedBeam loaded;

  private CutEnds(LoadedBeam loaded) {
    this.loaded = loaded;
  }

  static CutEnds of(LoadedBeam loaded) {
    return new CutEnds(loaded);
  }

  /** What the end left or right of a cut presses, at most. */
  static double pressedLb(SupportForces forces, int cut, boolean left) {
    return endLb(forces, cut, left) + Math.max(0, forces.overLb(cut));
  }

  private static double endLb(SupportForces forces, int cut, boolean left) {
    return left ? forces.leftLb(cut) : forces.rightLb(cut);
  }

  /** The most that any end of a list of cuts presses, 0 or more. */
  static double mostLb(SupportForces forces, List<Integer> cuts) {
    double mostLb = 0;
    for (int cut : cuts) {
      mostLb = Math.max(mostLb, pressedLb(forces, cut, true));
      mostLb = Math.max(mostLb, pressedLb(forces, cut, false));
    }
    return mostLb;
  }

  /** The most that any end presses and the strongest lift of any, one entry a combination. */
  List<HeaderChecks.PostLoad> worst(double ownWeightLbPerIn) {
    Map<LoadCombination, HeaderChecks.PostLoad> worst = new EnumMap<>(LoadCombination.class);
    if (loaded.beam().cuts().isEmpty()) {
      return List.of();
    }
    for (SupportCase one : loaded.onSupports(ownWeightLbPerIn)) {
      double liftLb = 0;
      for (int cut : loaded.beam().cuts()) {
        liftLb = Math.max(liftLb, Math.max(liftLb(one, cut, true), liftLb(one, cut, false)));
      }
      double downLb = mostLb(one.forces(), loaded.beam().cuts());
      worst.merge(
          one.combination(),
          new HeaderChecks.PostLoad(one.combination(), downLb, liftLb),
          HeaderChecks.PostLoad::most);
    }
    return List.copyOf(worst.values());
  }

  /** Vines may be cut back: where they hold an end down, they do not count. */
  private double liftLb(SupportCase one, int cut, boolean left) {
    SupportForces vines = loaded.vines().onSupports();
    double helpLb = one.vines() ? Math.max(0, endLb(vines, cut, left)) : 0;
    return helpLb - endLb(one.forces(), cut, left) - Math.min(0, one.forces().overLb(cut));
  }
}

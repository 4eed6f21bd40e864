package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.ground.BuriedFooting;
import org.scantling.ground.ConcreteWeight;
import org.scantling.ground.Sliding;
import org.scantling.ground.VerticalBearing;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;

/**
 * Whether the pier under a bracket slides: its base rubs on what presses it at the same time, its
 * side leans on the soil. The depth against tipping leans on the same soil and asks for more, so
 * that this speaks only where the record of a base has eased that depth.
 */
final class PierSliding {
  private final FootingWork.Foot foot;
  private final List<Push> pushes;

  /**
   * What pushes a pier sideways, and what stands on it at the same time.
   *
   * @param downLb negative where it is lifted
   */
  public record Push(LoadCombination combination, double pushLb, double downLb) {
    /** The harder push on the lighter foot, whichever posts they are of. */
    Push worse(Push other) {
      return new Push(combination, Math.max(pushLb, other.pushLb), Math.min(downLb, other.downLb));
    }
  }

  /**
   * @param pushes one for each combination; none for posts in the ground
   */
  PierSliding(FootingWork.Foot foot, List<Push> pushes) {
    this.foot = foot;
    this.pushes = pushes;
  }

  /** Least depth in whole inches at which the pier stays; 0 where nothing stands on a pier. */
  double depthIn(double holeDiameterIn, double deepestIn) {
    if (pushes.isEmpty()) {
      return 0;
    }
    double depthIn = 1;
    while (depthIn < deepestIn && !stays(depthIn, holeDiameterIn)) {
      depthIn++;
    }
    return depthIn;
  }

  private boolean stays(double depthIn, double holeDiameterIn) {
    return pushes.stream()
        .allMatch(each -> pier(each, depthIn, holeDiameterIn).sliding().check().passes());
  }

  /** The combination in which the pier is nearest to sliding. */
  Optional<SlidPier> hardest(double depthIn, double holeDiameterIn) {
    return pushes.stream()
        .map(each -> pier(each, depthIn, holeDiameterIn))
        .max(
            Comparator.<SlidPier>comparingDouble(each -> each.sliding().check().ratio())
                .thenComparing(each -> each.push().combination()));
  }

  /** Push against hold; the weight of the pier counts as the combination has it. */
  SlidPier pier(Push push, double depthIn, double holeDiameterIn) {
    ConcreteWeight concrete =
        ConcreteWeight.of(
            BuriedFooting.fullCollar(depthIn, holeDiameterIn, 0), foot.weights().concretePcf());
    double pressedLb =
        push.downLb() + push.combination().factor(LoadKind.DEAD) * concrete.weightLb();
    Sliding.Footing pier =
        new Sliding.Footing(
            Math.max(0, pressedLb),
            VerticalBearing.circleIn2(holeDiameterIn),
            depthIn,
            holeDiameterIn);
    return new SlidPier(push, concrete, pressedLb, Sliding.of(push.pushLb(), pier, foot.soil()));
  }
}

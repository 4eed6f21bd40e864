package org.scantling.confirm;

import java.util.HashMap;
import java.util.Map;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.Sway;

/**
 * One combination on one braced plane, second-order sway included. What a post goes through in it
 * is looked up along its whole length once, whoever asks.
 */
final class BracedCase {
  private final LoadCombination combination;
  private final BracedReach reach;
  private final FrameResult all;
  private final FrameResult still;
  private final Sway sway;
  private final double driftIn;
  private final double onPostLb;
  private final Map<Integer, BracedPostForces> on = new HashMap<>();
  private final Map<Integer, BracedPostForces> stillOn = new HashMap<>();

  /**
   * @param combination the combination
   * @param reach what of the plane is worth looking at
   * @param all forces and movements under everything in it
   * @param still the same without the push of the wind
   * @param sway vertical load against the load at which the plane leans over by itself
   * @param driftIn movement of the top under the push, the added sway included
   * @param onPostLb what each post carries besides the beam of this plane
   */
  BracedCase(
      LoadCombination combination,
      BracedReach reach,
      FrameResult all,
      FrameResult still,
      Sway sway,
      double driftIn,
      double onPostLb) {
    this.combination = combination;
    this.reach = reach;
    this.all = all;
    this.still = still;
    this.sway = sway;
    this.driftIn = driftIn;
    this.onPostLb = onPostLb;
  }

  LoadCombination combination() {
    return combination;
  }

  BracedReach reach() {
    return reach;
  }

  FrameResult all() {
    return all;
  }

  FrameResult still() {
    return still;
  }

  Sway sway() {
    return sway;
  }

  double driftIn() {
    return driftIn;
  }

  double onPostLb() {
    return onPostLb;
  }

  /** What a post goes through, counted from 0. */
  BracedPostForces on(int post) {
    return on.computeIfAbsent(post, each -> BracedPostForces.of(all, each));
  }

  /** The same without the push of the wind. */
  BracedPostForces stillOn(int post) {
    return stillOn.computeIfAbsent(post, each -> BracedPostForces.of(still, each));
  }
}

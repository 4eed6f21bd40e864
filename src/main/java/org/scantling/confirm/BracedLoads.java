package org.scantling.confirm;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameLoad;

/**
 * The loads on one braced plane, by kind.
 *
 * @param own weight of posts and beam and of what the beam carries
 * @param vines climbers
 * @param live live load spread over the top
 * @param people one person, at each place worth trying
 * @param snow snow on everything
 * @param windDown wind pressing down, strength level
 * @param windUp wind lifting, strength level
 * @param push wind from the side, strength level
 * @param onPostLb what each post carries besides the beam of this plane, in pounds, by combination;
 *     negative where the wind lifts it
 */
record BracedLoads(
    List<FrameLoad> own,
    List<FrameLoad> vines,
    List<FrameLoad> live,
    List<Person> people,
    List<FrameLoad> snow,
    List<FrameLoad> windDown,
    List<FrameLoad> windUp,
    List<FrameLoad> push,
    ToDoubleFunction<LoadCombination> onPostLb) {

  /**
   * One person on the beam.
   *
   * @param atIn from the first post
   */
  record Person(double atIn, FrameLoad load) {}
}

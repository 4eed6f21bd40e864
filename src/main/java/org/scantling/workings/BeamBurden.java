package org.scantling.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.scantling.confirm.BeamScene;
import org.scantling.confirm.Lying;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;

/**
 * What lies on each overhang and span of a beam in one combination, region by region from the left;
 * a beam without overhangs has its spans alone.
 *
 * @param scene the beam, and how the load lies on it
 * @param part all of it, what stays, or what comes and goes
 * @param each the loads before any factor
 */
record BeamBurden(BeamScene scene, Part part, Each each) {

  /** Which loads of a combination. */
  enum Part {
    ALL,
    STILL,
    PASSING
  }

  /**
   * The loads before any factor: on each inch of a crossbeam, or on a header those of each
   * crossbeam.
   *
   * @param ownLbPerIn weight of the beam itself where the loads are those of crossbeams
   * @param personLb one person
   */
  record Each(
      double ownLbPerIn,
      double deadLb,
      double vinesLb,
      double liveLb,
      double snowLb,
      double pressLb,
      double liftLb,
      double personLb) {}

  int regions() {
    return lying().liveShares().size();
  }

  /** The region of a span. */
  int region(int span) {
    return span + (tailed() ? 1 : 0);
  }

  boolean tailed() {
    return regions() > scene.beam().spanCount();
  }

  double dead() {
    return part == Part.PASSING ? 0 : combination().factor(LoadKind.DEAD);
  }

  /** Vines hold the top down, so they are left out where it is lifted. */
  double vines() {
    return part == Part.PASSING || lifts() ? 0 : combination().factor(LoadKind.VINES);
  }

  double live(int region) {
    return passing() * combination().factor(LoadKind.ROOF_LIVE) * lying().liveShares().get(region);
  }

  double snow(int region) {
    return passing() * combination().factor(LoadKind.SNOW) * lying().snowShares().get(region);
  }

  double press() {
    return lifts() ? 0 : passing() * combination().factor(LoadKind.WIND);
  }

  double lift() {
    return lifts() ? passing() * combination().factor(LoadKind.WIND) : 0;
  }

  double person() {
    return passing() * combination().factor(LoadKind.ROOF_LIVE);
  }

  /** What lies on a region: by the inch on a crossbeam, of each crossbeam on a header. */
  double on(int region) {
    return dead() * each.deadLb()
        + vines() * each.vinesLb()
        + live(region) * each.liveLb()
        + snow(region) * each.snowLb()
        + press() * each.pressLb()
        - lift() * each.liftLb();
  }

  /** The header's own weight by the inch. */
  double ownLbPerIn() {
    return dead() * each.ownLbPerIn();
  }

  /** Where one person stands, from the left tip. */
  OptionalDouble personAtIn() {
    return part == Part.STILL ? OptionalDouble.empty() : lying().personAtIn();
  }

  double personLb() {
    return person() * each.personLb();
  }

  /** Regions that carry the same, in groups. */
  List<List<Integer>> alike() {
    List<List<Integer>> groups = new ArrayList<>();
    for (int region = 0; region < regions(); region++) {
      int here = region;
      groups.stream()
          .filter(group -> live(group.get(0)) == live(here) && snow(group.get(0)) == snow(here))
          .findFirst()
          .ifPresentOrElse(group -> group.add(here), () -> groups.add(startingWith(here)));
    }
    return groups;
  }

  private static List<Integer> startingWith(int region) {
    List<Integer> group = new ArrayList<>();
    group.add(region);
    return group;
  }

  LoadCombination combination() {
    return lying().combination();
  }

  private Lying lying() {
    return scene.lying();
  }

  private boolean lifts() {
    return combination() == LoadCombination.UPLIFT;
  }

  private int passing() {
    return part == Part.STILL ? 0 : 1;
  }
}

package org.scantling.shop;

import java.util.List;

/**
 * What is planted and what it holds on to.
 *
 * @param plants one entry a post that has one, from the first post on, the near row first
 * @param runs wires, each in one length
 * @param words what to tell whoever plants, one entry a climber
 */
public record Climbers(List<Plant> plants, List<WireRun> runs, List<String> words) {
  public Climbers {
    plants = List.copyOf(plants);
    runs = List.copyOf(runs);
    words = List.copyOf(words);
  }

  /**
   * @param post name of the post
   * @param vine the climber
   * @param offIn distance from the post, on the outer side
   */
  public record Plant(String post, String vine, double offIn) {}

  /**
   * What a run is made of.
   *
   * @param wire kind and thickness
   * @param eye what it hangs in
   */
  public record Parts(String wire, String eye) {}

  /**
   * Runs alike.
   *
   * @param where which panel or row
   * @param vine the climber that it is for
   * @param parts what it is made of
   * @param way upright or level
   * @param wires stretches of each run
   * @param heightsIn over the ground for level wires, from the lowest; distances from the first
   *     post of the bay for upright ones
   * @param lengthIn of one run, with what is wrapped back at its ends
   * @param eyes on one run
   * @param holes bored through rails or pickets for one run
   * @param times how many such runs
   */
  public record WireRun(
      String where,
      String vine,
      Parts parts,
      String way,
      int wires,
      List<Double> heightsIn,
      double lengthIn,
      int eyes,
      int holes,
      int times) {
    public WireRun {
      heightsIn = List.copyOf(heightsIn);
    }

    /** The same with its place and number. */
    WireRun hung(String place, int number) {
      return new WireRun(place, vine, parts, way, wires, heightsIn, lengthIn, eyes, holes, number);
    }
  }

  public double wireIn() {
    return runs.stream().mapToDouble(each -> each.times() * each.lengthIn()).sum();
  }

  public int eyes() {
    return runs.stream().mapToInt(each -> each.times() * each.eyes()).sum();
  }

  public int holes() {
    return runs.stream().mapToInt(each -> each.times() * each.holes()).sum();
  }
}

package org.scantling.design;

import java.util.List;
import java.util.stream.IntStream;

/** How a walk is divided along its length, from the first post to the last, centre to centre. */
public sealed interface Bays permits EvenBays, UnevenBays {

  /** So many of one length. */
  static Bays of(int count, double lengthIn) {
    return new EvenBays(count, lengthIn);
  }

  /** Each by its length, from the first post on; what differs in its last bits does not differ. */
  static Bays of(List<Double> lengthsIn) {
    double firstIn = lengthsIn.get(0);
    return lengthsIn.stream().allMatch(each -> Math.abs(each - firstIn) < UnevenBays.LAST_BITS)
        ? new EvenBays(lengthsIn.size(), firstIn)
        : new UnevenBays(lengthsIn);
  }

  int count();

  double longestIn();

  double shortestIn();

  /** A bay, counted from 0 at the first post. */
  double lengthIn(int bay);

  /** Centre of a post from that of the first one, which is counted 0. */
  double alongIn(int post);

  /**
   * Equal spaces in a bay, none wider than those of the longest bay.
   *
   * @param inLongest spaces in the longest bay, 1 or more
   */
  int spacesIn(int bay, int inLongest);

  /** As many bays in the same proportion, the longest of that length. */
  default Bays stretchedTo(double longestIn) {
    if (longestIn == longestIn()) {
      return this;
    }
    double ratio = longestIn / longestIn();
    return even()
        ? of(count(), longestIn)
        : of(lengthsIn().stream().map(each -> each * ratio).toList());
  }

  /** All of those spaces together. */
  default int spaces(int inLongest) {
    return IntStream.range(0, count()).map(bay -> spacesIn(bay, inLongest)).sum();
  }

  /** True where all are as long. */
  boolean even();

  /** True where it looks the same from both ends. */
  boolean mirrored();

  /** First post to last. */
  default double overallIn() {
    return alongIn(count());
  }

  default List<Double> lengthsIn() {
    return IntStream.range(0, count()).mapToObj(this::lengthIn).toList();
  }

  /** The most of side, from middle of bay to middle of bay, that leans on one post. */
  double tributaryIn();
}

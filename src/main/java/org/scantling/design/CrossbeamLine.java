package org.scantling.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the crossbeams lie along the walk: one over every post, the same space between them in a
 * bay, and on the tails as far apart as where they are farthest apart.
 *
 * @param perBay spaces in the longest bay
 * @param onTail crossbeams past each end post
 */
record CrossbeamLine(Bays bays, int perBay, int onTail) {
  /** From crossbeam to crossbeam, where it is most. */
  double spacingIn() {
    return bays.longestIn() / perBay;
  }

  double spacingIn(int bay) {
    return bays.lengthIn(bay) / spacesIn(bay);
  }

  int spacesIn(int bay) {
    return bays.spacesIn(bay, perBay);
  }

  int fewestSpaces() {
    return bays.even() ? perBay : each().map(this::spacesIn).min().orElseThrow();
  }

  int count() {
    return bays.spaces(perBay) + 1 + 2 * onTail;
  }

  /** Centres from the centre of the first post; the first may be negative. */
  List<Double> placesIn() {
    List<Double> places = new ArrayList<>();
    int last = count() - onTail;
    for (int i = -onTail; i < last; i++) {
      places.add(placeIn(i));
    }
    return places;
  }

  /** Counted from the one over the first post. */
  private double placeIn(int place) {
    if (bays.even() || place < 0) {
      return place * spacingIn();
    }
    int left = place;
    for (int bay = 0; bay < bays.count(); bay++) {
      if (left < spacesIn(bay)) {
        return bays.alongIn(bay) + left * spacingIn(bay);
      }
      left -= spacesIn(bay);
    }
    return bays.overallIn() + left * spacingIn();
  }

  /**
   * What of the widest spacing lies on each, in their order: half of the space on either side; of
   * the first and the last, all of the one beside them.
   */
  List<Double> sharesRatio() {
    if (bays.even()) {
      return Collections.nCopies(count(), 1.0);
    }
    List<Double> places = placesIn();
    int last = places.size() - 1;
    return IntStream.rangeClosed(0, last)
        .mapToObj(
            i -> {
              double beforeIn = i > 0 ? places.get(i) - places.get(i - 1) : spaceIn(places, 0);
              double afterIn = spaceIn(places, Math.min(i, last - 1));
              return (beforeIn + afterIn) / 2 / spacingIn();
            })
        .toList();
  }

  private static double spaceIn(List<Double> places, int after) {
    return places.get(after + 1) - places.get(after);
  }

  private IntStream each() {
    return IntStream.range(0, bays.count());
  }
}

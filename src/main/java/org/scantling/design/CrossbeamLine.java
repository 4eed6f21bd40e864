package org.scantling.design;

import java.util.ArrayList;
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

  /** The same with what lies on each. */
  List<CrossbeamPlace> places() {
    List<Double> places = placesIn();
    return IntStream.range(0, places.size())
        .mapToObj(i -> new CrossbeamPlace(places.get(i), bays.even() ? 1 : shareRatio(places, i)))
        .toList();
  }

  private double shareRatio(List<Double> places, int place) {
    double beforeIn = spaceIn(places, Math.max(place - 1, 0));
    double afterIn = spaceIn(places, Math.min(place, places.size() - 2));
    return (beforeIn + afterIn) / 2 / spacingIn();
  }

  private static double spaceIn(List<Double> places, int after) {
    return places.get(after + 1) - places.get(after);
  }

  private IntStream each() {
    return IntStream.range(0, bays.count());
  }
}

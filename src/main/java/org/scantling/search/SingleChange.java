package org.scantling.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.stream.IntStream;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;

/**
 * The nearest value of one demand that leads to a wanted answer by itself.
 *
 * <p>Of numbers, the samples are tried outwards until one leads there; then every step nearer to
 * today's value is tried as well, so that none was passed over.
 */
final class SingleChange {
  private final DemandLine line;
  private final Wanted wanted;

  SingleChange(DemandLine line, Wanted wanted) {
    this.line = line;
    this.wanted = wanted;
  }

  /** At most one for each direction; of words at most one. */
  List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    if (line.words()) {
      word().ifPresent(place -> ways.add(way(place)));
    } else {
      nearest(false).ifPresent(place -> ways.add(way(place)));
      nearest(true).ifPresent(place -> ways.add(way(place)));
    }
    return ways;
  }

  /** The nearest place that way, seen from today, of a number or of words that stand in order. */
  OptionalInt nearest(boolean up) {
    int today = line.scale().today();
    SortedSet<Integer> samples = line.scale().samples();
    List<Integer> outward =
        (up ? samples.tailSet(today + 1) : samples.headSet(today))
            .stream().sorted(Comparator.comparingInt(place -> Math.abs(place - today))).toList();
    for (int sample : outward) {
      if (met(sample)) {
        return IntStream.rangeClosed(1, Math.abs(sample - today))
            .map(step -> today + (up ? step : -step))
            .filter(this::met)
            .findFirst();
      }
    }
    return OptionalInt.empty();
  }

  private OptionalInt word() {
    DemandScale scale = line.scale();
    return IntStream.rangeClosed(scale.least(), scale.most())
        .filter(place -> place != scale.today())
        .filter(this::met)
        .boxed()
        .min(Comparator.comparingDouble(line::shareRatio))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  boolean met(int place) {
    return wanted.met(line.at(place));
  }

  private Way way(int place) {
    return new Way(List.of(line.change(place)), line.at(place));
  }
}

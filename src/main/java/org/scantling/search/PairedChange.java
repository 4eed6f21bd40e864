package org.scantling.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;

/**
 * The least change of two demands that leads to a wanted answer where neither does alone.
 *
 * <p>Numbers, and words that stand in order, are tried towards less of the demand (towards more
 * where more than today's answer is wanted). The ends are tried first: where even they do not lead
 * there, nothing nearer is tried. What is found is then drawn in: no step less of either, with the
 * other as it is, leads there.
 */
final class PairedChange {
  /** Places between the ends of one demand at which the least of the other is looked for. */
  private static final int TRIES = 6;

  private final DemandLine one;
  private final DemandLine other;
  private final List<Integer> places;
  private final List<Integer> others;
  private final Wanted wanted;

  /**
   * One of the two.
   *
   * @param insufficient the places that do not lead there alone, the nearest to today's first
   */
  record Member(DemandLine line, List<Integer> insufficient) {
    /**
     * @param up true where what has an order is tried towards more
     */
    static Member of(DemandLine line, Wanted wanted, boolean up) {
      SingleChange alone = new SingleChange(line, wanted);
      return new Member(
          line,
          line.ordered()
              ? toward(line.scale(), alone.nearest(up), up)
              : line.scale().samples().stream()
                  .filter(place -> place != line.scale().today() && !alone.met(place))
                  .sorted(Comparator.comparingDouble(line::shareRatio))
                  .toList());
    }

    /** The places that way, up to the one that is enough, or to the end. */
    private static List<Integer> toward(DemandScale scale, OptionalInt enough, boolean up) {
      int end = up ? scale.most() : scale.least();
      int last = Math.abs(enough.orElse(end) - scale.today()) - (enough.isPresent() ? 1 : 0);
      return IntStream.rangeClosed(1, last)
          .map(step -> scale.today() + (up ? step : -step))
          .boxed()
          .toList();
    }
  }

  /**
   * @param one whose line works the pairs
   * @param other whose line is only asked for its values
   */
  PairedChange(Member one, Member other, Wanted wanted) {
    this.one = one.line();
    this.other = other.line();
    this.places = one.insufficient();
    this.others = other.insufficient();
    this.wanted = wanted;
  }

  private record Pair(int place, int otherPlace) {}

  Optional<Way> way() {
    Optional<Pair> least;
    if (!one.ordered() && !other.ordered()) {
      least = words();
    } else if (!one.ordered()) {
      least = wordAndMore();
    } else if (!other.ordered()) {
      least = moreAndWord();
    } else {
      least = bothOrdered();
    }
    return least.map(this::way);
  }

  private Optional<Pair> words() {
    List<Pair> pairs = new ArrayList<>();
    places.forEach(place -> others.forEach(each -> pairs.add(new Pair(place, each))));
    return pairs.stream()
        .sorted(Comparator.comparingDouble(this::shareRatio))
        .filter(this::met)
        .findFirst();
  }

  private Optional<Pair> moreAndWord() {
    List<Pair> found = new ArrayList<>();
    for (int word : others) {
      nearest(places, place -> new Pair(place, word)).ifPresent(found::add);
    }
    return found.stream().min(Comparator.comparingDouble(this::shareRatio));
  }

  private Optional<Pair> wordAndMore() {
    List<Pair> found = new ArrayList<>();
    for (int word : places) {
      nearest(others, place -> new Pair(word, place)).ifPresent(found::add);
    }
    return found.stream().min(Comparator.comparingDouble(this::shareRatio));
  }

  private Optional<Pair> bothOrdered() {
    if (places.isEmpty() || others.isEmpty() || !met(new Pair(last(places), last(others)))) {
      return Optional.empty();
    }
    List<Pair> found = new ArrayList<>();
    for (int place : spread()) {
      nearest(others, each -> new Pair(place, each)).ifPresent(found::add);
    }
    return found.stream()
        .min(Comparator.comparingDouble(this::shareRatio))
        .map(pair -> drawnIn(pair));
  }

  private Set<Integer> spread() {
    Set<Integer> spread = new TreeSet<>();
    for (int i = 1; i <= TRIES; i++) {
      spread.add(places.get((places.size() - 1) * i / TRIES));
    }
    return spread;
  }

  /** The least of the one for that of the other, then the least of the other for that. */
  private Pair drawnIn(Pair pair) {
    int place =
        nearest(upTo(places, pair.place()), each -> new Pair(each, pair.otherPlace()))
            .orElse(pair)
            .place();
    Pair first = new Pair(place, pair.otherPlace());
    return nearest(upTo(others, pair.otherPlace()), each -> new Pair(place, each)).orElse(first);
  }

  private static List<Integer> upTo(List<Integer> places, int last) {
    return places.subList(0, places.indexOf(last) + 1);
  }

  private interface Pairing {
    Pair with(int place);
  }

  /** The nearest place that leads there, by halving; nothing where the farthest does not. */
  private Optional<Pair> nearest(List<Integer> places, Pairing pairing) {
    if (places.isEmpty() || !met(pairing.with(last(places)))) {
      return Optional.empty();
    }
    int not = -1;
    int does = places.size() - 1;
    while (does - not > 1) {
      int middle = (not + does) / 2;
      if (met(pairing.with(places.get(middle)))) {
        does = middle;
      } else {
        not = middle;
      }
    }
    return Optional.of(pairing.with(places.get(does)));
  }

  private boolean met(Pair pair) {
    return wanted.met(one.at(pair.place(), other, pair.otherPlace()));
  }

  private double shareRatio(Pair pair) {
    return one.shareRatio(pair.place()) + other.shareRatio(pair.otherPlace());
  }

  private Way way(Pair pair) {
    return new Way(
        List.of(one.change(pair.place()), other.change(pair.otherPlace())),
        one.at(pair.place(), other, pair.otherPlace()));
  }

  private static int last(List<Integer> places) {
    return places.get(places.size() - 1);
  }
}

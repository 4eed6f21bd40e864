package org.scantling.design;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the posts of a walk stand if some stretches of it must stay free of them.
 *
 * <p>Every stretch lies within one bay. Once it is known within which, the posts are kept to places
 * between bounds, and a string drawn tight between those bounds shows the evenest of them: of all
 * divisions it has at once the shortest longest bay and the least sum of squares. Geometry.
 */
final class PostPlaces {
  private static final double SAME_IN = 1e-9;

  private final int bays;
  private final double lengthIn;
  private final List<FreeStretch> free;
  private Optional<List<Double>> best = Optional.empty();

  private PostPlaces(int bays, double lengthIn, List<FreeStretch> free) {
    this.bays = bays;
    this.lengthIn = lengthIn;
    this.free =
        free.stream()
            .filter(stretch -> stretch.toIn() > 0 && stretch.fromIn() < lengthIn)
            .sorted(Comparator.comparingDouble(FreeStretch::fromIn))
            .toList();
  }

  /**
   * The evenest division into so many bays that keeps every stretch free.
   *
   * @param free stretches that hold neither the first post nor the last
   * @return alike bays where none has to move
   */
  static Bays of(int bays, double lengthIn, List<FreeStretch> free) {
    Bays even = Bays.of(bays, lengthIn / bays);
    if (free.isEmpty() || keepsFree(even, free)) {
      return even;
    }
    PostPlaces places = new PostPlaces(bays, lengthIn, free);
    places.lay(new int[0], even.lengthsIn());
    return places.best.map(Bays::of).orElse(even);
  }

  /** True where no post between the first and the last stands in one of them. */
  static boolean keepsFree(Bays bays, List<FreeStretch> free) {
    return IntStream.range(1, bays.count())
        .mapToDouble(bays::alongIn)
        .allMatch(at -> free.stream().allMatch(stretch -> stretch.insideIn(at) <= SAME_IN));
  }

  /**
   * Lays the stretches from the next one on within bays, in every way that may still be evener than
   * the best so far: a string between fewer bounds is never less even, so that most ways need not
   * be followed to their end.
   *
   * @param bayOf the bay of every stretch before it
   * @param lengthsIn the evenest bays that keep those free
   */
  private void lay(int[] bayOf, List<Double> lengthsIn) {
    if (best.filter(found -> !evener(lengthsIn, found)).isPresent()) {
      return;
    }
    if (bayOf.length == free.size()) {
      best = Optional.of(lengthsIn);
      return;
    }
    FreeStretch next = free.get(bayOf.length);
    double middleIn = (next.fromIn() + next.toIn()) / 2;
    int first = bayOf.length == 0 ? 0 : bayOf[bayOf.length - 1];
    IntStream.range(first, bays)
        .boxed()
        .sorted(Comparator.comparingDouble(bay -> Math.abs(bay + 0.5 - bays * middleIn / lengthIn)))
        .forEach(
            bay -> {
              if (longer(next, bay)) {
                return;
              }
              int[] more = Arrays.copyOf(bayOf, bayOf.length + 1);
              more[bayOf.length] = bay;
              tight(more).ifPresent(found -> lay(more, found));
            });
  }

  /**
   * True where the bays up to the far end of a stretch, or from its near end on, would have to be
   * longer than those of the best so far.
   */
  private boolean longer(FreeStretch stretch, int bay) {
    double leastIn =
        Math.max(stretch.toIn() / (bay + 1), (lengthIn - stretch.fromIn()) / (bays - bay));
    return best.filter(found -> leastIn > Collections.max(found) + SAME_IN).isPresent();
  }

  private static boolean evener(List<Double> one, List<Double> other) {
    double longerIn = Collections.max(one) - Collections.max(other);
    return longerIn < -SAME_IN
        || (longerIn <= SAME_IN && squares(one) < squares(other) * (1 - SAME_IN));
  }

  private static double squares(List<Double> lengthsIn) {
    return lengthsIn.stream().mapToDouble(each -> each * each).sum();
  }

  /** The tight string; none where the posts have no room in that order. */
  private Optional<List<Double>> tight(int[] bayOf) {
    double[] leastIn = new double[bays + 1];
    double[] mostIn = new double[bays + 1];
    Arrays.fill(mostIn, lengthIn);
    for (int stretch = 0; stretch < bayOf.length; stretch++) {
      for (int post = 0; post <= bays; post++) {
        if (post <= bayOf[stretch]) {
          mostIn[post] = Math.min(mostIn[post], free.get(stretch).fromIn());
        } else {
          leastIn[post] = Math.max(leastIn[post], free.get(stretch).toIn());
        }
      }
    }
    mostIn[0] = 0;
    leastIn[bays] = lengthIn;
    boolean room = IntStream.rangeClosed(0, bays).allMatch(post -> leastIn[post] <= mostIn[post]);
    return room ? Optional.of(lengths(drawn(leastIn, mostIn))) : Optional.empty();
  }

  private static List<Double> lengths(double[] alongIn) {
    return IntStream.range(1, alongIn.length)
        .mapToObj(post -> alongIn[post] - alongIn[post - 1])
        .toList();
  }

  /** From bound to bound, each time to the first bound that a straight line on would leave. */
  private double[] drawn(double[] leastIn, double[] mostIn) {
    double[] alongIn = new double[bays + 1];
    int from = 0;
    while (from < bays) {
      int to = bend(from, alongIn[from], leastIn, mostIn, alongIn);
      for (int post = from + 1; post < to; post++) {
        alongIn[post] = alongIn[from] + (alongIn[to] - alongIn[from]) * (post - from) / (to - from);
      }
      from = to;
    }
    return alongIn;
  }

  /** The next post at which the string bends, or the last one; its place is noted. */
  private int bend(int from, double fromIn, double[] leastIn, double[] mostIn, double[] alongIn) {
    int low = from;
    int high = from;
    double lowIn = Double.NEGATIVE_INFINITY;
    double highIn = Double.POSITIVE_INFINITY;
    for (int post = from + 1; post <= bays; post++) {
      double atLeastIn = (leastIn[post] - fromIn) / (post - from);
      double atMostIn = (mostIn[post] - fromIn) / (post - from);
      if (atLeastIn > highIn) {
        alongIn[high] = mostIn[high];
        return high;
      }
      if (atMostIn < lowIn) {
        alongIn[low] = leastIn[low];
        return low;
      }
      if (atLeastIn >= lowIn) {
        low = post;
        lowIn = atLeastIn;
      }
      if (atMostIn <= highIn) {
        high = post;
        highIn = atMostIn;
      }
    }
    alongIn[bays] = lengthIn;
    return bays;
  }
}

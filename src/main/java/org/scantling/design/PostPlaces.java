package org.scantling.design;

import java.util.ArrayList;
import java.util.Arrays;
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
    return places
        .within(0, new int[places.free.size()])
        .map(alongIn -> Bays.of(lengths(alongIn)))
        .orElse(even);
  }

  /** True where no post between the first and the last stands in one of them. */
  static boolean keepsFree(Bays bays, List<FreeStretch> free) {
    return IntStream.range(1, bays.count())
        .mapToDouble(bays::alongIn)
        .allMatch(at -> free.stream().allMatch(stretch -> stretch.insideIn(at) <= SAME_IN));
  }

  private static List<Double> lengths(double[] alongIn) {
    return IntStream.range(1, alongIn.length)
        .mapToObj(post -> alongIn[post] - alongIn[post - 1])
        .toList();
  }

  /**
   * The evenest places of all ways to lay the stretches from that one on within bays.
   *
   * @param bayOf the bay of every stretch before it
   */
  private Optional<double[]> within(int stretch, int[] bayOf) {
    if (stretch == free.size()) {
      return tight(bayOf);
    }
    FreeStretch now = free.get(stretch);
    int least = (int) Math.floor(bays * Math.max(0, now.fromIn()) / lengthIn);
    int most = (int) Math.ceil(bays * Math.min(lengthIn, now.toIn()) / lengthIn) - 1;
    int first = stretch == 0 ? least : Math.max(least, bayOf[stretch - 1]);
    List<double[]> found = new ArrayList<>();
    for (int bay = first; bay <= Math.min(most, bays - 1); bay++) {
      int[] next = bayOf.clone();
      next[stretch] = bay;
      within(stretch + 1, next).ifPresent(found::add);
    }
    return found.stream().min(PostPlaces::evener);
  }

  private static int evener(double[] one, double[] other) {
    double longerIn = longestIn(one) - longestIn(other);
    if (Math.abs(longerIn) > SAME_IN) {
      return longerIn < 0 ? -1 : 1;
    }
    double squares = squares(one) - squares(other);
    return Math.abs(squares) <= SAME_IN * squares(other) ? 0 : Double.compare(squares, 0);
  }

  private static double longestIn(double[] alongIn) {
    return lengths(alongIn).stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  private static double squares(double[] alongIn) {
    return lengths(alongIn).stream().mapToDouble(each -> each * each).sum();
  }

  /** The tight string; none where the posts have no room in that order. */
  private Optional<double[]> tight(int[] bayOf) {
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
    return room ? Optional.of(drawn(leastIn, mostIn)) : Optional.empty();
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

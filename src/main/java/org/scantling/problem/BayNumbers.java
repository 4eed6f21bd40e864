package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.scantling.design.Site;
import org.scantling.tables.Tables;

/** The numbers of bays into which a walk may be divided. */
final class BayNumbers {
  private final Site site;
  private final Tables tables;

  BayNumbers(Site site, Tables tables) {
    this.site = site;
    this.tables = tables;
  }

  /**
   * The numbers of bays that are tried as whole structures: all whose bays the rules take and that
   * differ enough, or as many as the row allows, spread evenly. On a long walk there are over a
   * hundred, and neighbours hardly differ.
   *
   * @param allowed false for a number that the rules stop
   */
  List<Integer> triedWhole(List<Integer> counts, IntPredicate allowed) {
    double longestIn = tables.thumb("bay.longest").amount();
    double apartRatio = tables.thumb("bay.tried-apart").amount();
    int most = (int) Math.round(tables.thumb("bay.tried-most").amount());
    double lengthIn = site.walkway().lengthIn();
    List<Integer> apart = new ArrayList<>();
    for (int bays : counts) {
      boolean near = !apart.isEmpty() && bays < (1 + apartRatio) * apart.get(apart.size() - 1);
      if (lengthIn / bays <= longestIn && allowed.test(bays) && !near) {
        apart.add(bays);
      }
    }
    return spread(apart, most);
  }

  private static List<Integer> spread(List<Integer> all, int most) {
    if (all.size() <= most) {
      return all;
    }
    return IntStream.range(0, most)
        .map(i -> most == 1 ? 0 : Math.round((float) i * (all.size() - 1) / (most - 1)))
        .mapToObj(all::get)
        .distinct()
        .toList();
  }

  /** Every number of bays that could divide a walk. */
  static List<Integer> possible(Site site, Tables tables) {
    double leastIn = tables.thumb("bay.least").amount();
    if (site.walkway().divided().isPresent()) {
      return List.of(site.walkway().baysIn().size());
    }
    int fitting = Math.max(1, (int) Math.ceil(site.walkway().lengthIn() / leastIn));
    int most = Math.max(fitting, site.walkway().bays().orElse(1));
    return IntStream.rangeClosed(1, most).boxed().toList();
  }
}

package org.scantling.depths;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;

/**
 * Which hole depths are wanted: every combination of these.
 *
 * @param site the place, and the base whose habits count there
 * @param design the structure, its holes aside
 * @param stands how its posts stand, each a table of its own
 */
public record DepthRequest(
    Site site,
    BaseDesign design,
    List<Stand> stands,
    List<Double> windsMph,
    List<Double> frostsIn) {
  public DepthRequest {
    stands = List.copyOf(stands);
    windsMph = List.copyOf(windsMph);
    frostsIn = List.copyOf(frostsIn);
  }

  /** Posts and what they stand in: what one table of winds and frosts is about. */
  public record Stand(String post, double heightIn, double bayIn, String soil, String fill) {
    public static Stand of(DepthCase each) {
      return new Stand(each.post(), each.heightIn(), each.bayIn(), each.soil(), each.fill());
    }

    public DepthCase at(double windSpeedMph, double frostDepthIn) {
      return new DepthCase(post, heightIn, bayIn, soil, fill, windSpeedMph, frostDepthIn);
    }
  }

  /** True where a single hole is asked for. */
  public boolean single() {
    return stands.size() * windsMph.size() * frostsIn.size() == 1;
  }

  /** The structure on every kind of its posts. */
  public List<BaseDesign> designs() {
    return stands.stream()
        .map(each -> each.at(windsMph.get(0), frostsIn.get(0)).of(design))
        .distinct()
        .toList();
  }

  List<DepthCase> cases() {
    List<DepthCase> cases = new ArrayList<>();
    for (Stand stand : stands) {
      for (double wind : windsMph) {
        frostsIn.forEach(frost -> cases.add(stand.at(wind, frost)));
      }
    }
    return cases;
  }
}

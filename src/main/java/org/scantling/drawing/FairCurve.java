package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import org.scantling.shop.EndCut;

/**
 * The cut of a curved tail between the points of the cut list, as a batten bent through them would
 * lie: cubic from point to point, upright at the nose and level at the underside.
 */
final class FairCurve {
  /** So many chords from one point to the next leave no corner that a pencil would show. */
  private static final int CHORDS = 8;

  private final List<EndCut.Corner> points;

  private FairCurve(List<EndCut.Corner> points) {
    this.points = points;
  }

  /** The outline of a tail from its upper corner on; a slant stays as it is. */
  static List<EndCut.Corner> of(EndCut.Shaped tail) {
    List<EndCut.Corner> outline = tail.outline();
    if (!tail.kind().equals("curve")) {
      return outline;
    }
    List<EndCut.Corner> fair = new ArrayList<>(outline.subList(0, 2));
    FairCurve curve = new FairCurve(outline.subList(1, outline.size()));
    for (int i = 0; i + 1 < curve.points.size(); i++) {
      for (int chord = 1; chord < CHORDS; chord++) {
        fair.add(curve.between(i, (double) chord / CHORDS));
      }
      fair.add(curve.points.get(i + 1));
    }
    return fair;
  }

  private EndCut.Corner between(int place, double part) {
    EndCut.Corner from = points.get(place);
    EndCut.Corner to = points.get(place + 1);
    EndCut.Corner leaving = tangent(place);
    EndCut.Corner arriving = tangent(place + 1);
    return new EndCut.Corner(
        cubic(from.backIn(), leaving.backIn(), to.backIn(), arriving.backIn(), part),
        cubic(from.downIn(), leaving.downIn(), to.downIn(), arriving.downIn(), part));
  }

  /** Hermite's form of the cubic through two points with given tangents. */
  private static double cubic(
      double from, double leaving, double to, double arriving, double part) {
    double rest = 1 - part;
    return rest * rest * (1 + 2 * part) * from
        + rest * rest * part * leaving
        + part * part * (3 - 2 * part) * to
        - part * part * rest * arriving;
  }

  private EndCut.Corner tangent(int place) {
    int last = points.size() - 1;
    EndCut.Corner before = points.get(Math.max(0, place - 1));
    EndCut.Corner after = points.get(Math.min(last, place + 1));
    double back = after.backIn() - before.backIn();
    double down = after.downIn() - before.downIn();
    if (place == 0) {
      return new EndCut.Corner(0, down);
    }
    return place == last ? new EndCut.Corner(back, 0) : new EndCut.Corner(back / 2, down / 2);
  }
}

package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.mechanics.BeamLoad;

/**
 * One header as it runs from tip to tip over all its posts, and what lies on it.
 *
 * @param each what one crossbeam puts on it
 */
record HeaderRun(Geometry geometry, HeaderLoad each) {

  /** Centres of the posts from the tip of the header. */
  double[] posts() {
    double[] posts = new double[geometry.plan().bays() + 1];
    for (int i = 0; i < posts.length; i++) {
      posts[i] = geometry.headerTailIn() + i * geometry.plan().bayIn();
    }
    return posts;
  }

  /** The loads by kind; those that may lie on one span alone are listed span by span. */
  BeamLoads loads() {
    List<Double> places = geometry.crossbeamsAtIn().stream().map(this::fromTip).toList();
    return new BeamLoads(
        BeamLoads.points(places, each.deadLb()),
        BeamLoads.points(places, each.vinesLb()),
        bySpan(places, each.liveLb()),
        BeamLoads.points(peopleFromTipIn(), each.personLb()),
        bySpan(places, each.snowLb()),
        BeamLoads.points(places, each.windDownLb()),
        BeamLoads.points(places, -each.windUpLb()));
  }

  /** Places of one person worth trying, from the tip. */
  List<Double> peopleFromTipIn() {
    return PersonPlaces.on(
        geometry.headerLengthIn(), posts(), geometry.posts().breadthIn() / 2);
  }

  private List<List<BeamLoad>> bySpan(List<Double> places, double forceLb) {
    List<List<BeamLoad>> loads = new ArrayList<>();
    double[] marks = marks();
    for (int i = 0; i + 1 < marks.length; i++) {
      loads.add(between(places, marks[i], marks[i + 1], forceLb));
    }
    return loads;
  }

  /** The tips, the posts, and nothing else. */
  private double[] marks() {
    double[] posts = posts();
    double[] marks = new double[posts.length + 2];
    System.arraycopy(posts, 0, marks, 1, posts.length);
    marks[posts.length + 1] = geometry.headerLengthIn();
    return marks;
  }

  /** A crossbeam over a post counts with the bay to its right; over a post it bends nothing. */
  private static List<BeamLoad> between(
      List<Double> places, double fromIn, double toIn, double forceLb) {
    return BeamLoads.points(
        places.stream().filter(place -> place >= fromIn && place < toIn).toList(), forceLb);
  }

  private double fromTip(double fromFirstPostIn) {
    return geometry.headerTailIn() + fromFirstPostIn;
  }
}

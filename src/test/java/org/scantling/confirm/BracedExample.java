package org.scantling.confirm;

import java.util.function.Function;
import org.scantling.design.Geometry;
import org.scantling.loads.DurationFactors;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.timber.Adjustments;
import org.scantling.timber.DesignValues;
import org.scantling.timber.Rectangle;

/** A walk on brackets in dry Douglas fir-larch with round numbers, for hand work. */
final class BracedExample {
  static final DesignValues FIR = new DesignValues(900, 575, 180, 625, 1350, 1.6e6, 0.58e6, 0.5);

  /** Factors of NDS 2018, Table 2.3.2; K_e 2.1 and c 0.8; the rest as the house tables have it. */
  static final Limits LIMITS =
      new Limits(
          new DurationFactors(0.9, 1.15, 1.25, 1.6), 2, 180, 240, 2.1, 0.8, 1.0 / 60, 1.0 / 6, 1);

  static final BracedRules RULES = new BracedRules(1, 0.5625, 1.0 / 6, 0.5);

  static final Function<String, Source> SOURCES =
      id -> new Source(SourceKind.CALCULATION, id, false);

  static final TopLoads TOP = new TopLoads(2, 10, 200, 8, 6, 5);

  private BracedExample() {}

  static Material timber(double breadthIn, double depthIn, int plies) {
    return new Material(new Rectangle(breadthIn, depthIn), plies, FIR, Adjustments.none(), 35);
  }

  /** Bays of 96 in between rows 96 in apart, posts 84 in high, headers on top. */
  static Geometry geometry(int bays) {
    return new Geometry(
        new Geometry.Plan(96, 96, bays),
        new Geometry.Posts(5.5, 84),
        new Geometry.Headers(false, 5.5, 7.5, 12, 0.5),
        new Geometry.Crossbeams(6, 1.5, 7.25, 12, 0.5, 1.5));
  }

  static BracedTimbers timbers(double braceBreadthIn) {
    return new BracedTimbers(
        timber(5.5, 5.5, 1),
        timber(5.5, 7.5, 1),
        timber(1.5, 7.25, 1),
        timber(braceBreadthIn, 3.5, 1),
        24);
  }

  static BracedWalk walk(int bays, double windLb) {
    return walk(bays, windLb, timbers(3.5));
  }

  static BracedWalk walk(int bays, double windLb, BracedTimbers timbers) {
    Geometry geometry = geometry(bays);
    return new BracedWalk(geometry, timbers, headers(geometry, timbers), TOP, wind(windLb));
  }

  static HeaderChecks headers(Geometry geometry, BracedTimbers timbers) {
    return new HeaderChecks(geometry, timbers.crossbeam(), TOP, LIMITS, SOURCES);
  }

  /** Half of the wind at the top of a post, half spread over it, both ways. */
  static PostChecks.Standing wind(double windLb) {
    SidePush push = new SidePush(windLb / 2, windLb / 2, 84);
    return new PostChecks.Standing(push, push, 0, 0, 1);
  }
}

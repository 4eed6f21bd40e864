package org.scantling.confirm;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;
import org.scantling.design.Geometry;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.loads.DurationFactors;
import org.scantling.loads.FoliageCover;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.SolidityBands;
import org.scantling.loads.WallRule;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.timber.Adjustments;
import org.scantling.timber.DesignValues;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.WetService;

/**
 * One small structure with round loads, so that everything can be worked by hand.
 *
 * <p>Posts 68 in across and 42 in along, 4x4, 90 in out of the ground. Headers 4x4, 72 in, hence
 * tails of 15 in past the post centres. Seven crossbeams 2x4, 96 in, hence tails of 14 in past the
 * header centres, 10.5 in apart: at −10.5, 0, 10.5, 21, 31.5, 42 and 52.5 in from the first post.
 *
 * <p>Timber: Fb 1100, Fv 175, Fc⊥ 565, Fc 1450, E 1.4 million, E min 510 000 psi, 40 pcf; wet: C_M
 * 1 on Fb (not over 1150 psi), 0.97, 0.67, 0.8, 0.9. Top: vines 2, live 10, snow 8, wind 10 down
 * and 9 up psf, one person of 200 lb.
 */
final class SmallArbour {
  static final TopLoads TOP = new TopLoads(2, 10, 200, 8, 10, 9);
  static final Material TWO_BY_FOUR = material(1.5, 3.5);
  static final Material FOUR_BY_FOUR = material(3.5, 3.5);
  static final Limits LIMITS =
      new Limits(
          new DurationFactors(0.9, 1.15, 1.25, 1.6), 2, 180, 240, 2.1, 0.8, 1.0 / 60, 1.0 / 6, 1);
  static final Function<String, Source> SOURCES =
      id -> new Source(SourceKind.CALCULATION, "worked by hand", false);

  private SmallArbour() {}

  static Geometry geometry() {
    return geometry(1, new Geometry.Headers(false, 3.5, 3.5, 13.25, 0.5));
  }

  static Geometry geometry(int bays, Geometry.Headers headers) {
    return new Geometry(
        new Geometry.Plan(68, 42, bays),
        new Geometry.Posts(3.5, 90),
        headers,
        new Geometry.Crossbeams(4, 1.5, 3.5, 12.25, 0.5, 1.5));
  }

  static HeaderChecks headers(Geometry geometry) {
    return new HeaderChecks(geometry, TWO_BY_FOUR, TOP, LIMITS, SOURCES);
  }

  /** Velocity pressure 15 psf, so 15 · 0.85 · 1.8 = 22.95 psf on timber in the middle band. */
  static WindOnWalk wind(Geometry geometry) {
    return wind(geometry, 1);
  }

  static WindOnWalk wind(Geometry geometry, int pickets) {
    return wind(geometry, pickets, 0);
  }

  /**
   * @param matIn thickness of the climbers on the top
   */
  static WindOnWalk wind(Geometry geometry, int pickets, double matIn) {
    SolidityBands bands =
        new SolidityBands(
            List.of(
                new SolidityBands.Band(0, 2),
                new SolidityBands.Band(0.1, 1.8),
                new SolidityBands.Band(0.3, 1.6)),
            0.7);
    return new WindOnWalk(
        geometry,
        new WindOnWalk.Sides(3.5, 24, pickets, 1.5),
        new WindOnWalk.Rules(
            15,
            new LatticeRule(bands, 0.85, 16),
            new FoliageCover(0.5, 0.5),
            new FoliageCover(0.15, 0.5),
            new WindOnWalk.Shelter(0.3, 10),
            new WallRule(1.8, 0.85, 16),
            new WindOnWalk.Mat(matIn, new FoliageCover(0.8, 0.5), new FoliageCover(0.2, 0.5))));
  }

  /**
   * Rails housed 1 in deep, 24 in up. Wind across the walk 22.95 lb 91.625 in up and 110.01875 lb
   * along the 90 in of the post.
   */
  static PostChecks.Standing standing(int housedFaces) {
    SidePush across = new SidePush(22.95, 91.625, 110.01875, 90);
    return new PostChecks.Standing(across, wind(geometry()).along(), 1, 24, housedFaces);
  }

  static FootingWork footing(boolean concrete) {
    return footing(concrete, TOP);
  }

  static FootingWork footing(boolean concrete, TopLoads top) {
    return new FootingWork(
        foot(concrete),
        standing(1),
        new HeaderChecks(geometry(), TWO_BY_FOUR, top, LIMITS, SOURCES),
        new FootingWork.Beams(FOUR_BY_FOUR, FOUR_BY_FOUR));
  }

  static FootingWork.Foot foot(boolean concrete) {
    return new FootingWork.Foot(
        concrete,
        3.5,
        new PresumptiveSoil(3000, 200, 0.35, 0),
        2,
        new BallastWeights(150, 100, 0),
        24,
        0.15);
  }

  static Material material(double breadthIn, double depthIn) {
    return new Material(
        new Rectangle(breadthIn, depthIn),
        1,
        new DesignValues(1100, 675, 175, 565, 1450, 1_400_000, 510_000, 0.55),
        Adjustments.none()
            .wet(new WetService(new PropertyFactors(0.85, 1, 0.97, 0.67, 0.8, 0.9), 1150, 750)),
        40);
  }

  static Map<String, Checked> byId(List<Checked> checks) {
    return checks.stream().collect(Collectors.toMap(Checked::id, each -> each));
  }

  /** Demand, capacity and ratio of one check, each to one part in two thousand. */
  static void assertWorked(Checked checked, String combination, double demand, double capacity) {
    Assertions.assertThat(checked.combination()).as(checked.id()).isEqualTo(combination);
    near(checked.id() + " demand", checked.check().demand(), demand);
    near(checked.id() + " capacity", checked.check().capacity(), capacity);
    near(checked.id() + " ratio", checked.check().ratio(), demand / capacity);
  }

  private static void near(String what, double found, double worked) {
    Assertions.assertThat(found).as(what).isCloseTo(worked, Offset.offset(worked / 2000));
  }
}

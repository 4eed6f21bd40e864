package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.timber.Dowel;
import org.scantling.timber.PlacementRule;

class JointChecksTest {
  /** NDS 2018, Tables 11.3.3, 12.5.1A to D, 12.5.2.2, 12.5.4 (all from memory). */
  static final JointFactors FACTORS =
      new JointFactors(
          new JointFactors.Wet(0.7, 0.7, 0.25),
          new JointFactors.Pair(0.67, 0.75),
          new JointFactors.Pair(0.83, 0.67),
          new JointFactors.BoltPlaces(
              new PlacementRule("end, pulled", 3.5, 7),
              new PlacementRule("end, pressed", 2, 4),
              new PlacementRule("end, across", 2, 4),
              new PlacementRule("row along", 3, 4),
              new PlacementRule("row across", 3, 4),
              new PlacementRule("edge", 1.5, 1.5),
              new PlacementRule("loaded edge", 4, 4),
              new PlacementRule("rows", 5, 5),
              5),
          new PlacementRule("depth", 6, 10),
          new PlacementRule("depth", 4, 8));

  static final JointRules RULES =
      new JointRules(FACTORS, BracedExample.LIMITS, BracedExample.SOURCES);

  private static JointFix bolts(int count, double diameterIn) {
    return new JointFix(
        JointFix.Way.BOLTED,
        count,
        Dowel.smooth(diameterIn, 45000),
        new JointFix.Reach(10, 0, 0),
        new JointFix.Rated(0, 0));
  }

  private static JointFix rated(double liftLb, double sideLb) {
    return new JointFix(
        JointFix.Way.RATED,
        2,
        Dowel.smooth(1, 1),
        new JointFix.Reach(0, 0, 0),
        new JointFix.Rated(liftLb, sideLb));
  }

  private static Geometry paired() {
    return paired(1);
  }

  private static Geometry paired(int bays) {
    Geometry on = BracedExample.geometry(bays);
    return new Geometry(
        on.plan(), on.posts(), new Geometry.Headers(true, 1.5, 7.25, 12, 0), on.crossbeams());
  }

  /**
   * 50 lb of wind on the top, and 30 lb that pickets and leaves bring to the header: 0.6 of 80 lb
   * across the walk, where the same wind along it brings 0.6 of 50. Boards of a pair lie flat
   * against the post; their bolts feel the push along the walk alone.
   */
  @Test
  void a_header_on_top_holds_what_hangs_between_it_and_the_rail() {
    assertThat(mostSideLb(forces(BracedExample.geometry(1), 100).hung(30)))
        .isCloseTo(0.6 * 80, within(1e-9));
    assertThat(mostSideLb(forces(BracedExample.geometry(1), 100)))
        .isCloseTo(0.6 * 50, within(1e-9));
    assertThat(mostSideLb(forces(paired(), 100).hung(30)))
        .isEqualTo(mostSideLb(forces(paired(), 100)));
  }

  private static double mostSideLb(JointForces forces) {
    return forces.onPost().stream().mapToDouble(JointForce::sideLb).max().orElseThrow();
  }

  private static JointForces forces(Geometry geometry, double windLb) {
    BracedTimbers timbers = BracedExample.timbers(3.5);
    Material header =
        geometry.headers().paired() ? BracedExample.timber(1.5, 7.25, 2) : timbers.header();
    return new JointForces(
        BracedExample.headers(geometry, timbers), header, BracedExample.wind(windLb), 40);
  }

  private static List<Checked> bolted(int count, double diameterIn) {
    JointCrossing crossing =
        new JointCrossing(
            BracedExample.timber(5.5, 5.5, 1), BracedExample.timber(1.5, 7.25, 2), 14.75);
    return new JointBoltChecks(crossing, forces(paired(), 100), RULES).of(bolts(count, diameterIn));
  }

  private static Check check(List<Checked> checks, String id) {
    return checks.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow().check();
  }

  @Test
  void one_board_of_a_pair_has_half_of_each_bolt_the_printed_value_times_its_factors() {
    List<Checked> checks = bolted(2, 0.5);
    double duration =
        checks.stream()
            .filter(each -> each.id().equals("joint.header"))
            .findFirst()
            .orElseThrow()
            .loadDurationFactor();
    // NDS 2018, Table 12F (from memory): Z s-perp 730 lb, G 0.50, 5.5 in between 1.5 in, 1/2 in
    // bolt, printed to 10 lb; the group of two keeps at least 0.97 of it.
    // All of the load may be on one board, which has one of the two planes: half of it.
    double printedLb = 2 * 730 * duration * 0.7 / 2;
    assertThat(check(checks, "joint.header").capacity()).isBetween(0.97 * printedLb, printedLb + 4);
  }

  @Test
  void bolts_carry_the_heaviest_load_of_any_post_and_the_push_along_the_walk() {
    JointForces forces = forces(paired(), 100);
    double mostLb =
        forces.onPost().stream()
            .mapToDouble(each -> Math.hypot(each.downLb(), each.sideLb()))
            .max()
            .orElseThrow();
    assertThat(check(bolted(2, 0.5), "joint.header").demand()).isLessThanOrEqualTo(mostLb);
    assertThat(forces.onPost()).anyMatch(each -> each.combination() == LoadCombination.DEAD_SNOW);
  }

  /**
   * A crossbeam that sags leans on the inner board and may lift off the outer, so the board that is
   * bent by all of the load is held by its own half of the bolts, and shears past them, under all
   * of it too.
   */
  @Test
  void bolts_and_boards_of_a_pair_are_worked_with_the_same_share() {
    JointForces forces = forces(paired(), 100);
    HeaderChecks headers = BracedExample.headers(paired(), BracedExample.timbers(3.5));
    Material boards = BracedExample.timber(1.5, 7.25, 2);
    // Both boards on the post, less the weight of the second one: 124 in of 1.5 x 7.25 in, halved.
    double secondLb = (96 + 2 * 14.75) * 1.5 * 7.25 * 35 / 1728 / 2;
    double onPostLb = most(headers.onPosts(boards));
    double onBoltsLb =
        forces.onPost().stream()
            .filter(each -> each.combination() == LoadCombination.DEAD_SNOW)
            .mapToDouble(JointForce::downLb)
            .max()
            .orElseThrow();
    assertThat(onBoltsLb).isCloseTo(onPostLb - secondLb, within(1e-6));
    double shearLb = headers.shearLb(boards).get(LoadCombination.DEAD_SNOW);
    double bentPsi =
        headers.of(boards).stream()
            .filter(each -> each.id().equals("header.shear"))
            .findFirst()
            .orElseThrow()
            .check()
            .demand();
    assertThat(1.5 * shearLb / (1.5 * 7.25)).isLessThanOrEqualTo(bentPsi * (1 + 1e-9));
    assertThat(forces.headerShear().get(LoadCombination.DEAD_SNOW)).isEqualTo(shearLb);
  }

  private static double most(List<HeaderChecks.PostLoad> loads) {
    return loads.stream()
        .filter(each -> each.combination() == LoadCombination.DEAD_SNOW)
        .mapToDouble(HeaderChecks.PostLoad::downLb)
        .max()
        .orElseThrow();
  }

  @Test
  void more_or_thicker_bolts_carry_more() {
    double two = check(bolted(2, 0.5), "joint.header").ratio();
    assertThat(check(bolted(2, 0.625), "joint.header").ratio()).isLessThan(two);
    assertThat(check(bolted(4, 0.5), "joint.header").ratio()).isCloseTo(two / 2, within(1e-9));
  }

  @Test
  void half_inch_bolts_sit_four_diameters_from_the_edges_and_the_rest_apart() {
    JointCrossing crossing =
        new JointCrossing(
            BracedExample.timber(5.5, 5.5, 1), BracedExample.timber(1.5, 7.25, 2), 14.75);
    JointBoltLayout layout = JointBoltLayout.of(2, 0.5, crossing, FACTORS.bolts());
    assertThat(layout.toEdgeIn()).isCloseTo(2, within(1e-9));
    assertThat(layout.spacingIn()).isCloseTo(3.25, within(1e-9));
    assertThat(layout.pressed(FACTORS.bolts()).value()).isCloseTo(1, within(1e-9));
    // Lifted, the bolts pull at the top of the post, 2 in of the 3.5 in that count in full.
    assertThat(layout.lifted(FACTORS.bolts()).value()).isCloseTo(4.0 / 7, within(1e-9));
  }

  private static JointForces cut(Geometry geometry, Material header) {
    HeaderChecks whole = BracedExample.headers(geometry, BracedExample.timbers(3.5));
    Splice splice = Splice.bayByBay(geometry.plan().bays());
    return new JointForces(whole.inPieces(splice), header, BracedExample.wind(100), 40);
  }

  @Test
  void where_no_header_is_cut_no_cut_end_is_looked_at() {
    assertThat(bolted(2, 0.5)).noneMatch(each -> each.id().equals("joint.header-cut"));
  }

  @Test
  void bolts_near_the_cut_end_of_a_board_keep_the_share_of_their_distance() {
    Material boards = BracedExample.timber(1.5, 7.25, 2);
    JointCrossing crossing = new JointCrossing(BracedExample.timber(5.5, 5.5, 1), boards, 14.75);
    List<Checked> checks =
        new JointBoltChecks(crossing, cut(paired(2), boards), RULES).of(bolts(2, 0.5));
    JointBoltLayout layout = JointBoltLayout.atCut(0.5, crossing, FACTORS.bolts());

    // Two rows half of 5 1/2 in apart, so 1 3/8 in from the cut, where 4 diameters are 2 in.
    assertThat(layout.atCut(FACTORS.bolts(), false).value()).isCloseTo(1.375 / 2, within(1e-9));
    // Lifted, the top of the post is nearer by its own measure: 2 in of 3 1/2 in.
    assertThat(layout.atCut(FACTORS.bolts(), true).value()).isCloseTo(4.0 / 7, within(1e-9));
    double duration =
        checks.stream()
            .filter(each -> each.id().equals("joint.header-cut"))
            .findFirst()
            .orElseThrow()
            .loadDurationFactor();
    // NDS 2018, Table 12F (from memory), as above, times the share that the end leaves.
    double printedLb = 2 * 730 * duration * 0.7 / 2;
    assertThat(check(checks, "joint.header-cut").capacity() / printedLb)
        .isBetween(0.97 * 4.0 / 7, 1.375 / 2 + 0.01);
  }

  @Test
  void in_a_thin_post_two_ends_find_no_room_for_bolts() {
    Material boards = BracedExample.timber(1.5, 7.25, 2);
    JointCrossing thin = new JointCrossing(BracedExample.timber(3.5, 3.5, 1), boards, 14.75);
    List<Checked> checks =
        new JointBoltChecks(thin, cut(paired(2), boards), RULES).of(bolts(2, 0.5));
    // 7/8 in to the cut where the least is two diameters, 1 in.
    assertThat(check(checks, "joint.geometry").ratio()).isCloseTo(1 / 0.875, within(1e-9));
  }

  @Test
  void lag_screws_near_a_cut_end_hold_less_of_the_push_and_as_much_of_the_lift() {
    Geometry onTop = BracedExample.geometry(2);
    JointFix lags =
        new JointFix(
            JointFix.Way.LAGGED,
            2,
            new Dowel(0.375, 0.265, 45000),
            new JointFix.Reach(8, 4.28, 0.22),
            new JointFix.Rated(0, 0));
    Material header = BracedExample.timbers(3.5).header();
    JointForces forces = cut(onTop, header);
    List<Checked> checks =
        JointSeatChecks.ofHeader(forces, header, BracedExample.timber(3.5, 3.5, 1), 3.5 / 4, RULES)
            .header(lags);
    JointHold.Wood wood = new JointHold.Wood(0.5, 0.5, 3);
    JointHold whole = JointHold.of(lags, FACTORS, wood, 1.6);
    JointHold near = whole.near(FACTORS.bolts().endAcross().at(0.875, 0.375));

    assertThat(near.pullLb()).isEqualTo(whole.pullLb());
    // 7/8 in is 2.33 diameters of the 4 that count in full.
    assertThat(near.sideLb() / whole.sideLb()).isCloseTo(0.875 / 1.5, within(1e-9));
    assertThat(check(checks, "joint.header-cut").ratio())
        .isGreaterThan(check(checks, "joint.header").ratio());
  }

  @Test
  void four_thick_bolts_do_not_find_room_in_a_thin_post() {
    JointCrossing thin =
        new JointCrossing(
            BracedExample.timber(3.5, 3.5, 1), BracedExample.timber(1.5, 7.25, 2), 14.75);
    List<Checked> checks =
        new JointBoltChecks(thin, forces(paired(), 100), RULES).of(bolts(4, 0.5));
    // Rows 1.75 in apart where 5 diameters, 2.5 in, are asked for.
    assertThat(check(checks, "joint.geometry").ratio()).isCloseTo(2.5 / 1.75, within(1e-9));
  }

  @Test
  void three_toe_nails_hold_a_quarter_of_their_dry_pull() {
    JointFix nails =
        new JointFix(
            JointFix.Way.TOE_NAILED,
            3,
            Dowel.smooth(0.162, 90000),
            new JointFix.Reach(3.5, 0, 0),
            new JointFix.Rated(0, 0));
    JointHold hold = JointHold.of(nails, FACTORS, new JointHold.Wood(0.5, 0.5, 3.5), 1.6);
    // NDS 2018, Table 12.2C (from memory): 40 lb/in for 16d in G 0.50; 3.5 cos 30 - 3.5 / 3 in.
    double printedLb = 3 * 40 * (3.5 * Math.cos(Math.PI / 6) - 3.5 / 3) * 0.67 * 0.25 * 1.6;
    assertThat(hold.pullLb()).isCloseTo(printedLb, within(0.015 * printedLb));
    // NDS 2018, Table 12N: 141 lb in a 1.5 in side; the slant leaves 1.17 in, which is no stronger.
    assertThat(hold.sideLb())
        .isBetween(0.7 * 3 * 141 * 0.83 * 0.7 * 1.6, 3 * 141 * 0.83 * 0.7 * 1.6);
  }

  @Test
  void lag_screws_in_end_grain_hold_three_quarters() {
    JointFix lags =
        new JointFix(
            JointFix.Way.LAGGED,
            2,
            new Dowel(0.375, 0.265, 45000),
            new JointFix.Reach(8, 4.28, 0.22),
            new JointFix.Rated(0, 0));
    JointHold hold = JointHold.of(lags, FACTORS, new JointHold.Wood(0.5, 0.5, 3), 1.6);
    // NDS 2018, Table 12.2A: 305 lb/in; all the thread is in the post: 8 - 3 - 0.22 > 4.28 in.
    assertThat(hold.pullLb()).isCloseTo(2 * 305 * 4.28 * 0.75 * 0.7 * 1.6, within(2.0));
    // A header 7 in thick leaves 0.78 in of thread, less than the least depth of 4 diameters.
    JointHold shallow = JointHold.of(lags, FACTORS, new JointHold.Wood(0.5, 0.5, 7), 1.6);
    assertThat(shallow.pullLb()).isCloseTo(2 * 305 * 0.78 * 0.75 * 0.7 * 1.6, within(2.0));
    assertThat(shallow.depths()).noneMatch(each -> each.check().passes());
  }

  @Test
  void push_and_lift_use_up_the_same_joint() {
    JointHold hold = new JointHold(600, 300, List.of());
    JointForce force = new JointForce(LoadCombination.UPLIFT, 0, 150, 75);
    assertThat(hold.together(force).ratio()).isCloseTo(0.25 + 0.25, within(1e-12));
    assertThat(hold.sideways(force).ratio()).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void what_lifts_a_crossbeam_is_wind_less_six_tenths_of_its_weight() {
    double halfIn = (96 + 2 * (2.75 + 12)) / 2;
    double windLb = 0.6 * 5 * 16 * halfIn / 144;
    double weightLb = 0.6 * halfIn * 1.5 * 7.25 * 35 / 1728;
    JointForce force = forces(BracedExample.geometry(1), 100).onCrossbeam().get(0);
    assertThat(force.liftLb()).isCloseTo(windLb - weightLb, within(1e-9));
    assertThat(force.sideLb()).isCloseTo(0.6 * 40 / 2, within(1e-9));
  }

  @Test
  void a_braced_walk_asks_more_of_the_joints_at_its_posts() {
    Geometry geometry = BracedExample.geometry(1);
    JointForces plain = forces(geometry, 300);
    JointForces braced = plain.in(BracedExample.walk(1, 300));
    BracedTimbers timbers = BracedExample.timbers(3.5);
    JointFix angles = rated(1200, 900);
    double ofPlain =
        check(
                JointSeatChecks.ofCrossbeam(plain, timbers.crossbeam(), timbers.header(), RULES)
                    .crossbeam(angles),
                "joint.crossbeam")
            .ratio();
    double ofBraced =
        check(
                JointSeatChecks.ofCrossbeam(braced, timbers.crossbeam(), timbers.header(), RULES)
                    .crossbeam(angles),
                "joint.crossbeam")
            .ratio();
    assertThat(ofBraced).isGreaterThan(2 * ofPlain);
    assertThat(
            check(
                    JointSeatChecks.ofHeader(
                            braced, timbers.header(), timbers.post(), 3.5 / 4, RULES)
                        .header(angles),
                    "joint.header-uplift")
                .ratio())
        .isPositive();
  }

  @Test
  void the_bolt_of_a_brace_carries_the_force_along_it() {
    BracedWalk walk = BracedExample.walk(1, 300);
    List<Checked> checks = new JointBraceChecks(walk, RULES).of(bolts(1, 0.5));
    double mostLb = 0;
    for (BracedCase each : walk.across().cases()) {
      mostLb = Math.max(mostLb, -each.all().member("brace.0.right").mostCompression().amount());
      mostLb = Math.max(mostLb, each.all().member("brace.0.right").mostTension().amount());
    }
    Check joint = check(checks, "brace.joint");
    assertThat(joint.demand()).isBetween(0.5 * mostLb, mostLb * (1 + 1e-9));
    // NDS 2018, Table 12A (from memory): 480 lb along the grain of both, 220 lb across both, for
    // two 1.5 in pieces; a 3.5 in brace on a 1.5 in crossbeam at 45 degrees lies above their
    // middle.
    assertThat(joint.capacity()).isBetween(350 * 0.7 * 1.6 * 0.7, 720 * 0.7 * 1.6);
    assertThat(check(checks, "joint.geometry").ratio()).isLessThanOrEqualTo(1);
  }

  @Test
  void the_worst_timber_of_a_brace_governs_its_bolts() {
    JointBraceChecks braces = new JointBraceChecks(BracedExample.walk(1, 300), RULES);
    JointFix bolt = bolts(1, 0.5);
    double worst = 0;
    for (JointBraceChecks.Timber timber : JointBraceChecks.Timber.values()) {
      worst = Math.max(worst, check(braces.at(timber, bolt), "brace.joint").ratio());
    }
    assertThat(check(braces.of(bolt), "brace.joint").ratio()).isEqualTo(worst);
    // The crossbeam is 1.5 in thick, the post and the header 5.5 in.
    assertThat(check(braces.at(JointBraceChecks.Timber.CROSSBEAM, bolt), "brace.joint").ratio())
        .isEqualTo(worst);
  }

  @Test
  void a_brace_that_stands_off_its_post_holds_less_of_it() {
    BracedTimbers timbers = BracedExample.timbers(3.5);
    double touching = ofPost(BracedExample.geometry(1), timbers);
    double packed = ofPost(paired(), timbers);
    assertThat(packed).isGreaterThan(1.3 * touching);
  }

  /** How hard the bolts through the post are worked, by the force of the same frames. */
  private static double ofPost(Geometry geometry, BracedTimbers timbers) {
    BracedWalk walk =
        new BracedWalk(
            geometry,
            timbers,
            BracedExample.headers(geometry, timbers),
            BracedExample.TOP,
            BracedExample.wind(300));
    Check post =
        check(
            new JointBraceChecks(walk, RULES).at(JointBraceChecks.Timber.POST, bolts(1, 0.5)),
            "brace.joint");
    return post.ratio();
  }

  @Test
  void a_bolted_joint_cannot_hold_a_seat_and_forces_cannot_be_negative() {
    assertThatThrownBy(
            () -> JointHold.of(bolts(2, 0.5), FACTORS, new JointHold.Wood(0.5, 0.5, 3), 1))
        .hasMessageContaining("must be nailed, screwed or rated, not BOLTED");
    assertThatThrownBy(() -> new JointForce(LoadCombination.UPLIFT, -1, 0, 0))
        .hasMessageStartingWith("forces on a joint must be zero or more");
  }

  /** 5 1/2 in post, rows half of it apart: 1.375 in to the cut in plan, 1.375 x 1.0308 at 25 %. */
  @Test
  void the_end_distance_at_a_cut_is_measured_along_the_sloping_board() {
    Material post = BracedExample.timber(5.5, 5.5, 1);
    Material boards = BracedExample.timber(1.5, 7.25, 2);
    JointFactors.BoltPlaces places = RULES.factors().bolts();
    JointBoltLayout level =
        JointBoltLayout.atCut(0.5, new JointCrossing(post, boards, 14.75), places);
    JointBoltLayout sloping =
        JointBoltLayout.atCut(
            0.5, new JointCrossing(post, boards, 14.75, Math.hypot(1, 0.25)), places);
    assertThat(level.toCutIn()).isEqualTo(1.375, within(1e-9));
    assertThat(sloping.toCutIn()).isEqualTo(1.4173, within(1e-4));
    // Table 12.5.1A, 4 D in full: 1.375 / 2 and 1.4173 / 2 of the value of a 1/2 in bolt.
    assertThat(level.atCut(places, false).asFactor().value()).isEqualTo(0.6875, within(1e-6));
    assertThat(sloping.atCut(places, false).asFactor().value()).isEqualTo(0.7087, within(1e-4));
  }

  /** Ratings against 1.2 times and 0.8 times what the ends of a cut header press. */
  @Test
  void a_hanger_at_a_step_carries_what_the_end_of_the_lower_header_presses() {
    Geometry geometry = BracedExample.geometry(3);
    BracedTimbers timbers = BracedExample.timbers(3.5);
    HeaderChecks cut = BracedExample.headers(geometry, timbers).inPieces(Splice.bayByBay(3));
    JointForces forces = new JointForces(cut, timbers.header(), BracedExample.wind(100), 40);
    double mostLb = forces.onCutEnd().stream().mapToDouble(JointForce::downLb).max().orElseThrow();
    assertThat(mostLb).isGreaterThan(100);
    for (double share : new double[] {1.2, 0.8}) {
      JointFix hanger =
          new JointFix(
              JointFix.Way.RATED,
              1,
              Dowel.smooth(1, 1),
              new JointFix.Reach(0, 0, 0),
              new JointFix.Rated(2000, 2000, share * mostLb));
      List<Checked> checks = new JointStepChecks(forces, RULES).of(hanger);
      assertThat(check(checks, "joint.step").demand()).isLessThanOrEqualTo(mostLb);
      assertThat(check(checks, "joint.step").ratio() > 1).isEqualTo(share < 1);
      assertThat(checks).extracting(Checked::id).contains("joint.step-uplift");
    }
  }
}

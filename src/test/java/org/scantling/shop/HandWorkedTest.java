package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.scantling.design.Site;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.quantity.UnitSystem;

/**
 * One job from sketch to list, worked with pencil and paper. All lengths in inches.
 *
 * <p>The sketch, as proposed for scenarios/bean-row.yaml: a walk of 210 in 3 bays; rows 76 apart;
 * 6x6 posts (5 1/2 square), 92 out of the ground and 56 in it, gravel round them in holes 20 wide;
 * 6x8 headers (5 1/2 by 7 1/2) on top, notched 1/2, wanted with tails of 14 past the posts; 2x8
 * crossbeams (1 1/2 by 7 1/4), 3 spaces to a bay and none on the tails, notched 1, with tails of 16
 * past the headers; 2x6 rails (1 1/2 by 5 1/2) with their middles 28 up, 3/4 into the posts; three
 * 2x4 pickets to a bay; hops.
 *
 * <p>The bench: marks to 1/16, 1/8 of room in a notch, 12 of spare on a post, 6 of gravel and a pad
 * of 2 in a hole, a level line 12 over the ground; a kerf of 1/8, 1/4 off each end of a stick that
 * is cut up, and 2 for knots.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandWorkedTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private Lists lists;

  @BeforeAll
  void propose() {
    Site site =
        new SiteReader(Vocabulary.of(House.TABLES))
            .read(java.nio.file.Path.of("scenarios/bean-row.yaml"))
            .site();
    lists = Lists.of(House.propose(site), site, House.TABLES, Optional.empty());
  }

  private Shape only(String role) {
    assertThat(lists.pieces().of(role)).hasSize(1);
    return lists.pieces().of(role).get(0).shape();
  }

  private int count(String role) {
    return lists.pieces().count(role);
  }

  private static List<Double> from(List<Recess> recesses) {
    return recesses.stream().map(Recess::fromIn).toList();
  }

  private static List<Double> to(List<Recess> recesses) {
    return recesses.stream().map(Recess::toIn).toList();
  }

  /**
   * 210 / 3 = 70 to a bay: 0, 70, 140, 210; the other row 76 across. A rail of 1 1/2 enters a post
   * of 5 1/2 from outside, so the ends of a row are a left and a right one. Across the walk a post
   * is turned half round: A1 stands again at B4, A4 at B1, and the posts between are all alike.
   */
  @Test
  void stakes() {
    List<SetOut.PostMark> posts = lists.setOut().posts();
    assertThat(posts)
        .extracting(SetOut.PostMark::name)
        .containsExactly("A1", "A2", "A3", "A4", "B1", "B2", "B3", "B4");
    assertThat(posts)
        .extracting(SetOut.PostMark::alongIn)
        .containsExactly(0.0, 70.0, 140.0, 210.0, 0.0, 70.0, 140.0, 210.0);
    assertThat(posts)
        .extracting(SetOut.PostMark::acrossIn)
        .containsExactly(0.0, 0.0, 0.0, 0.0, 76.0, 76.0, 76.0, 76.0);
    assertThat(posts)
        .extracting(SetOut.PostMark::mark)
        .containsExactly("P1", "P2", "P2", "P3", "P3", "P2", "P2", "P1");
  }

  /**
   * A bay: 70² + 76² = 4900 + 5776 = 10676, its root 103.325, to the sixteenth 103 5/16. All: 210²
   * + 76² = 44100 + 5776 = 49876, its root 223.329, to the sixteenth 223 5/16. Spacers: 70 - 5 1/2
   * = 64 1/2 along, 76 - 5 1/2 = 70 1/2 across.
   */
  @Test
  void diagonals_and_spacers() {
    List<SetOut.Diagonal> diagonals = lists.setOut().diagonals();
    assertThat(diagonals).hasSize(8);
    assertThat(diagonals.subList(0, 6)).allMatch(each -> each.lengthIn() == 103.3125);
    assertThat(diagonals.subList(6, 8)).allMatch(each -> each.lengthIn() == 223.3125);
    assertThat(diagonals.get(6).from() + diagonals.get(6).to()).isEqualTo("A1B4");
    assertThat(lists.setOut().spacers())
        .extracting(SetOut.Spacer::lengthIn, SetOut.Spacer::count)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(64.5, 6),
            org.assertj.core.groups.Tuple.tuple(70.5, 4));
  }

  /**
   * The foot lies 56 down, under it 2 of pad and 6 of gravel: dig 64. From the line, 12 up: bottom
   * 76, foot 68. The top is 92 - 12 = 80 over the line. A post is 68 + 80 = 148, that is 12'-4".
   */
  @Test
  void holes_and_heights() {
    assertThat(lists.setOut().ground().lineOverDatumIn()).isEqualTo(12);
    for (SetOut.PostMark post : lists.setOut().posts()) {
      assertThat(post.digIn()).isEqualTo(64);
      assertThat(post.bottomBelowLineIn()).isEqualTo(76);
      assertThat(post.footBelowLineIn()).isEqualTo(68);
      assertThat(post.topOverLineIn()).isEqualTo(80);
      assertThat(post.lengthIn()).isEqualTo(148);
    }
  }

  /**
   * The middle of a rail is 28 + 56 = 84 from the foot. Its housing is 5 1/2 + 1/8 = 5 5/8 long:
   * from 84 - 2 13/16 = 81 3/16 to 86 13/16. Two in one post together take no more than 2/7 of its
   * 5 1/2, that is 1.571, so each is 0.786 deep at most, to the sixteenth below it 3/4. Rail and
   * post have their middles in one line, so from the outer face it is (5 1/2 + 1 1/2) / 2 = 3 1/2
   * across. Four end posts have one, four others one on each side.
   */
  @Test
  void posts() {
    List<Piece> posts = lists.pieces().of("post");
    assertThat(posts).extracting(Piece::count).containsExactly(2, 4, 2);
    assertThat(posts).extracting(each -> each.shape().recesses().size()).containsExactly(1, 2, 1);
    for (Piece post : posts) {
      assertThat(post.shape().lengthIn()).isEqualTo(148);
      assertThat(post.shape().spareIn()).isEqualTo(12);
      for (Recess housing : post.shape().recesses()) {
        assertThat(housing.fromIn()).isEqualTo(81.1875);
        assertThat(housing.toIn()).isEqualTo(86.8125);
        assertThat(housing.depthIn()).isEqualTo(0.75);
        assertThat(housing.acrossIn()).isEqualTo(3.5);
      }
    }
  }

  /**
   * Wanted: 210 + 5 1/2 + 28 = 243 1/2. The yard's longest 6x8 is 240, so each tail loses 1 3/4.
   * The first post then begins 12 1/4 from the end and its notch 1/16 before it: 12 3/16 to 17
   * 13/16; the others follow by 70. Lag screws: the middle of a post is 12 1/4 + 2 3/4 = 15 from
   * the end, a quarter of its breadth is 1 3/8: one at 13 5/8, one at 16 3/8, and so on.
   */
  @Test
  void headers() {
    Shape header = only("header");
    assertThat(count("header")).isEqualTo(2);
    assertThat(header.lengthIn()).isEqualTo(240);
    assertThat(from(header.recesses())).containsExactly(12.1875, 82.1875, 152.1875, 222.1875);
    assertThat(to(header.recesses())).containsExactly(17.8125, 87.8125, 157.8125, 227.8125);
    assertThat(header.recesses()).allMatch(each -> each.depthIn() == 0.5);
    assertThat(header.bores())
        .extracting(Bore::atIn)
        .containsExactly(13.625, 16.375, 83.625, 86.375, 153.625, 156.375, 223.625, 226.375);
    assertThat(header.bores())
        .extracting(Bore::offIn)
        .containsExactly(1.375, -1.375, 1.375, -1.375, 1.375, -1.375, 1.375, -1.375);
  }

  /**
   * 76 + 5 1/2 + 2 x 16 = 113 1/2. The near header's middle is 16 + 2 3/4 = 18 3/4 from the tip,
   * the far one's 94 3/4; a notch of 5 5/8 begins 2 13/16 before: 15 15/16 to 21 9/16, 91 15/16 to
   * 97 9/16. 3 x 3 + 1 = 10 of them, 70 / 3 = 23 1/3 apart. On the header the first post's middle
   * is 15 from the end, the first crossbeam's too, its near face 14 1/4; the next 37.583 and
   * 60.917, to the sixteenth 37 9/16 and 60 15/16; the last 14 1/4 + 210 = 224 1/4.
   */
  @Test
  void crossbeams() {
    Shape crossbeam = only("crossbeam");
    assertThat(count("crossbeam")).isEqualTo(10);
    assertThat(crossbeam.lengthIn()).isEqualTo(113.5);
    assertThat(from(crossbeam.recesses())).containsExactly(15.9375, 91.9375);
    assertThat(to(crossbeam.recesses())).containsExactly(21.5625, 97.5625);
    assertThat(crossbeam.recesses()).allMatch(each -> each.depthIn() == 1);
    List<Double> marks = lists.setOut().running().get(2).atIn();
    assertThat(marks).hasSize(10).startsWith(14.25, 37.5625, 60.9375, 84.25).endsWith(224.25);
  }

  /**
   * The tail is the base's, for the timber is as deep: a quarter of an ellipse from a nose of 3 to
   * the underside, 7 1/4 down, 5 back. Sixths of the quarter turn: 5 (1 - cos t) back and 3 + 4 1/4
   * sin t down is 0.170 and 4.100; 0.670 and 5.125; 1.464 and 6.005; 2.5 and 6.681; 3.706 and
   * 7.105, each to the sixteenth.
   */
  @Test
  void tails() {
    EndCut.Shaped tail = (EndCut.Shaped) only("crossbeam").first();
    assertThat(tail.outline())
        .containsExactly(
            new EndCut.Corner(0, 0),
            new EndCut.Corner(0, 3),
            new EndCut.Corner(0.1875, 4.125),
            new EndCut.Corner(0.6875, 5.125),
            new EndCut.Corner(1.4375, 6),
            new EndCut.Corner(2.5, 6.6875),
            new EndCut.Corner(3.6875, 7.125),
            new EndCut.Corner(5, 7.25));
    assertThat(only("crossbeam").last()).isEqualTo(tail);
  }

  /**
   * Rails: 70 - 5 1/2 + 2 x 3/4 = 66. Pickets: from the top of the rail, 28 + 2 3/4 = 30 3/4, to
   * the underside of the header, 92 - 1/2 = 91 1/2: 60 3/4.
   */
  @Test
  void sides() {
    assertThat(count("rail")).isEqualTo(6);
    assertThat(only("rail").lengthIn()).isEqualTo(66);
    assertThat(count("picket")).isEqualTo(18);
    assertThat(only("picket").lengthIn()).isEqualTo(60.75);
  }

  /**
   * Posts: 148 + 12 = 160, each out of 168: 8 sticks, a tenth more is 1.
   *
   * <p>6x8: two headers out of 240 each, nothing left.
   *
   * <p>2x8: a crossbeam takes 113 1/2 + 1/2 = 114, out of 120; two take 227 + 1/8 + 2 1/2 = 229
   * 5/8, out of 240, no less. 10 x 120 = 1200, of which 1135 is in pieces.
   *
   * <p>2x6: one rail out of 96; two take 132 + 1/8 + 2 1/2 = 134 5/8, out of 144; three 198 + 1/4 +
   * 2 1/2 = 200 3/4, out of 216, no less to a rail. 3 x 144 = 432, of which 6 x 66 = 396.
   *
   * <p>2x4: one picket out of 96; two take 121 1/2 + 2 5/8 = 124 1/8, out of 144; three 182 1/4 + 2
   * 3/4 = 185, out of 192, the least to a picket. 6 x 192 = 1152, of which 18 x 60 3/4 = 1093 1/2.
   *
   * <p>A tenth more of 10, 3 and 6 sticks is one each, as short as takes a piece.
   */
  @Test
  void sticks() {
    List<TimberPlan> timber = lists.buying().timber();
    assertThat(timber)
        .extracting(each -> each.stock().size() + each.stock().forTheGround())
        .containsExactly("6x6true", "6x8false", "2x8false", "2x6false", "2x4false");
    assertThat(timber.get(0).cuts())
        .extracting(StickCut::lengthIn, StickCut::times, StickCut::marks)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(168.0, 2, List.of("P1")),
            org.assertj.core.groups.Tuple.tuple(168.0, 4, List.of("P2")),
            org.assertj.core.groups.Tuple.tuple(168.0, 2, List.of("P3")));
    assertThat(timber.get(0).spare()).containsExactly(new TimberPlan.Spare(168, 1));
    assertThat(timber.get(1).cuts())
        .containsExactly(new StickCut(240, 2, List.of("H1"), StickCut.Ends.NEITHER));
    cut(timber.get(1), 480, 480, 240, 2, List.of("H1"));
    cut(timber.get(2), 1200, 1135, 120, 10, List.of("C1"));
    cut(timber.get(3), 432, 396, 144, 3, List.of("R1", "R1"));
    cut(timber.get(4), 1152, 1093.5, 192, 6, List.of("T1", "T1", "T1"));
    assertThat(timber.get(2).spare()).containsExactly(new TimberPlan.Spare(120, 1));
    assertThat(timber.get(3).spare()).containsExactly(new TimberPlan.Spare(96, 1));
    assertThat(timber.get(4).spare()).containsExactly(new TimberPlan.Spare(96, 1));
    assertThat(timber).allMatch(each -> each.result().proven());
  }

  private static void cut(
      TimberPlan plan,
      double boughtIn,
      double piecesIn,
      double stickIn,
      int times,
      List<String> of) {
    assertThat(plan.result().boughtIn()).isEqualTo(boughtIn, EXACT);
    assertThat(plan.result().piecesIn()).isEqualTo(piecesIn, EXACT);
    assertThat(plan.cuts())
        .extracting(StickCut::lengthIn, StickCut::times, StickCut::marks)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(stickIn, times, of));
  }

  /**
   * Crossbeams: 10 on 2 headers, 2 screws each: 40, a tenth more is 4, one box of 50. Lag screws: 2
   * at each of 8 posts: 16, and 2. Wood screws: 6 rails and 18 pickets, both ends, 2 each: 96; 16
   * temporary braces, 4 each, 64; 8 blocks under the headers, 3 each, 24: 184, and 19, three boxes
   * of 100.
   */
  @Test
  void fixings() {
    line("No. 14 structural screw, 4 in", 40, 4, 1);
    line("1/2 in lag screw, 10 in", 16, 2, 18);
    line("1/2 in flat washer", 16, 2, 18);
    line("No. 10 wood screw, 3 in", 184, 19, 3);
  }

  /**
   * A hole of 20 has 314.159 square inches, a post 30.25. Gravel: a bed 6 deep, 1885.0 cubic
   * inches, and 56 deep round the post, 283.909 x 56 = 15898.9: 17783.9 to a hole, 82.333 cubic
   * feet in eight; with a tenth more 90.57, in bags of half a foot 182. Dug, 64 deep: 20106.2 to a
   * hole, and nothing of it goes back: 93.084 cubic feet from eight, a quarter more when loose:
   * 116.355.
   */
  @Test
  void ground() {
    BuyingLine gravel = line("gravel");
    assertThat(gravel.needed().amount()).isCloseTo(82.333, within(0.001));
    assertThat(gravel.bought()).isEqualTo(182);
    assertThat(line("soil to take away, loose").needed().amount())
        .isCloseTo(116.355, within(0.005));
    line("flat stone or precast pad, nearly 1'-8\" wide", 8, 0, 8);
  }

  /**
   * Hops wind up upright wires 12 apart. Three pickets part a bay into gaps of 17 1/2, and one wire
   * halves each: at 8 3/4, 26 1/4, 43 3/4, 61 1/4. Each is 60 3/4 long, from rail to header, and
   * the run goes 52 1/2 across them, with 6 at either end: 243 + 52 1/2 + 12 = 307 1/2. Three bays
   * of two rows are six runs, 1845 or 153 3/4 ft; four eyes and four holes to a run. Posts are 70
   * apart and a middling climber wants 60, so each has one: 8.
   */
  @Test
  void climbers() {
    Climbers climbers = lists.climbers();
    assertThat(climbers.plants()).hasSize(8);
    assertThat(climbers.runs()).hasSize(1);
    Climbers.WireRun run = climbers.runs().get(0);
    assertThat(run.way()).isEqualTo("upright");
    assertThat(run.heightsIn()).containsExactly(8.75, 26.25, 43.75, 61.25);
    assertThat(run.lengthIn()).isEqualTo(307.5);
    assertThat(run.times()).isEqualTo(6);
    assertThat(climbers.wireIn()).isEqualTo(1845, EXACT);
    assertThat(climbers.eyes()).isEqualTo(24);
    assertThat(climbers.holes()).isEqualTo(24);
    line("10 gauge (3.4 mm) galvanized or stainless wire", 154, 16, 2);
  }

  /** What the inch and three quarters off each tail spare is a joint. */
  @Test
  void spared() {
    assertThat(lists.buying().savings())
        .containsExactly(
            new Saving("headers", "6x8", 243.5, 240, 0, true, java.util.OptionalLong.empty()));
    assertThat(ListCsv.of(lists, ListKind.BUYING, UnitSystem.IMPERIAL))
        .contains("spared,6x8,,,0,,in,\"headers, 20'-0\"\" instead of 20'-3 1/2\"\"\",,,,,,,\n");
  }

  private BuyingLine line(String item) {
    return lists.buying().lines().stream()
        .filter(each -> each.item().equals(item))
        .findFirst()
        .orElseThrow();
  }

  private void line(String item, double needed, double spare, int bought) {
    BuyingLine line = line(item);
    assertThat(line.needed().amount()).as(item).isEqualTo(needed);
    assertThat(line.spare().amount()).as(item).isEqualTo(spare);
    assertThat(line.bought()).as(item).isEqualTo(bought);
  }
}

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
 * <p>The sketch, as proposed for scenarios/bean-row.yaml: a walk of 165 in 4 bays; rows 60 apart;
 * 4x4 posts (3 1/2 square), 82 out of the ground and 41 in it, in holes 18 wide; 4x4 headers on
 * top, notched 1/2, wanted with tails of 12 past the posts; 2x4 crossbeams (1 1/2 by 3 1/2), 4
 * spaces to a bay and one on each tail, notched 1/2, with tails of 10 1/4 past the headers; 4x4
 * rails with their middles 24 up, 1/2 into the posts; one 2x4 picket to a bay; clematis.
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

  /** 165 / 4 = 41 1/4 to a bay: 0, 41 1/4, 82 1/2, 123 3/4, 165; the other row 60 across. */
  @Test
  void stakes() {
    List<SetOut.PostMark> posts = lists.setOut().posts();
    assertThat(posts)
        .extracting(SetOut.PostMark::name)
        .containsExactly("A1", "A2", "A3", "A4", "A5", "B1", "B2", "B3", "B4", "B5");
    assertThat(posts)
        .extracting(SetOut.PostMark::alongIn)
        .containsExactly(0.0, 41.25, 82.5, 123.75, 165.0, 0.0, 41.25, 82.5, 123.75, 165.0);
    assertThat(posts)
        .extracting(SetOut.PostMark::acrossIn)
        .containsExactly(0.0, 0.0, 0.0, 0.0, 0.0, 60.0, 60.0, 60.0, 60.0, 60.0);
    assertThat(posts)
        .extracting(SetOut.PostMark::mark)
        .containsExactly("P1", "P2", "P2", "P2", "P1", "P1", "P2", "P2", "P2", "P1");
  }

  /**
   * A bay: 41.25² + 60² = 1701.5625 + 3600 = 5301.5625, its root 72.812, to the sixteenth 72 13/16.
   * All: 165² + 60² = 27225 + 3600 = 30825, its root 175.571, to the sixteenth 175 9/16. Spacers:
   * 41 1/4 - 3 1/2 = 37 3/4 along, 60 - 3 1/2 = 56 1/2 across.
   */
  @Test
  void diagonals_and_spacers() {
    List<SetOut.Diagonal> diagonals = lists.setOut().diagonals();
    assertThat(diagonals).hasSize(10);
    assertThat(diagonals.subList(0, 8)).allMatch(each -> each.lengthIn() == 72.8125);
    assertThat(diagonals.subList(8, 10)).allMatch(each -> each.lengthIn() == 175.5625);
    assertThat(diagonals.get(8).from() + diagonals.get(8).to()).isEqualTo("A1B5");
    assertThat(lists.setOut().spacers())
        .extracting(SetOut.Spacer::lengthIn, SetOut.Spacer::count)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(37.75, 8),
            org.assertj.core.groups.Tuple.tuple(56.5, 5));
  }

  /**
   * The foot lies 41 down, under it 2 of pad and 6 of gravel: dig 49. From the line, 12 up: bottom
   * 61, foot 53. The top is 82 - 12 = 70 over the line. A post is 53 + 70 = 123, that is 10'-3".
   */
  @Test
  void holes_and_heights() {
    assertThat(lists.setOut().ground().lineOverDatumIn()).isEqualTo(12);
    for (SetOut.PostMark post : lists.setOut().posts()) {
      assertThat(post.digIn()).isEqualTo(49);
      assertThat(post.bottomBelowLineIn()).isEqualTo(61);
      assertThat(post.footBelowLineIn()).isEqualTo(53);
      assertThat(post.topOverLineIn()).isEqualTo(70);
      assertThat(post.lengthIn()).isEqualTo(123);
    }
  }

  /**
   * The middle of a rail is 24 + 41 = 65 from the foot. Its housing is 3 1/2 + 1/8 = 3 5/8 long:
   * from 65 - 1 13/16 = 63 3/16 to 66 13/16. Two in one post together take 2/7 of its 3 1/2, that
   * is 1, so each is 1/2 deep. Four end posts have one, six others one on each side.
   */
  @Test
  void posts() {
    List<Piece> posts = lists.pieces().of("post");
    assertThat(posts).extracting(Piece::count).containsExactly(4, 6);
    assertThat(posts).extracting(each -> each.shape().recesses().size()).containsExactly(1, 2);
    for (Piece post : posts) {
      assertThat(post.shape().lengthIn()).isEqualTo(123);
      assertThat(post.shape().spareIn()).isEqualTo(12);
      for (Recess housing : post.shape().recesses()) {
        assertThat(housing.fromIn()).isEqualTo(63.1875);
        assertThat(housing.toIn()).isEqualTo(66.8125);
        assertThat(housing.depthIn()).isEqualTo(0.5);
      }
    }
  }

  /**
   * Wanted: 165 + 3 1/2 + 24 = 192 1/2. The yard's longest 4x4 is 192, so each tail loses 1/4. The
   * first post then begins 11 3/4 from the end and its notch 1/16 before it: 11 11/16 to 15 5/16;
   * the others follow by 41 1/4. Lag screws: the middle of a post is 11 3/4 + 1 3/4 = 13 1/2 from
   * the end, a quarter of its breadth is 7/8: one at 12 5/8, one at 14 3/8, and so on.
   */
  @Test
  void headers() {
    Shape header = only("header");
    assertThat(count("header")).isEqualTo(2);
    assertThat(header.lengthIn()).isEqualTo(192);
    assertThat(from(header.recesses()))
        .containsExactly(11.6875, 52.9375, 94.1875, 135.4375, 176.6875);
    assertThat(to(header.recesses()))
        .containsExactly(15.3125, 56.5625, 97.8125, 139.0625, 180.3125);
    assertThat(header.recesses()).allMatch(each -> each.depthIn() == 0.5);
    assertThat(header.bores())
        .extracting(Bore::atIn)
        .containsExactly(
            12.625, 14.375, 53.875, 55.625, 95.125, 96.875, 136.375, 138.125, 177.625, 179.375);
    assertThat(header.bores())
        .extracting(Bore::offIn)
        .containsExactly(0.875, -0.875, 0.875, -0.875, 0.875, -0.875, 0.875, -0.875, 0.875, -0.875);
  }

  /**
   * 60 + 3 1/2 + 2 x 10 1/4 = 84. The near header's middle is 10 1/4 + 1 3/4 = 12 from the tip, the
   * far one's 72; a notch of 3 5/8 begins 1 13/16 before: 10 3/16 to 13 13/16, 70 3/16 to 73 13/16.
   * 4 x 4 + 1 + 2 = 19 of them, 41 1/4 / 4 = 10 5/16 apart. On the header the first post's middle
   * is 13 1/2 from the end, the first crossbeam's 13 1/2 - 10 5/16 = 3 3/16, its near face 2 7/16.
   * The tail is the base's, for the timber is as deep: a nose of 2, back 3.
   */
  @Test
  void crossbeams() {
    Shape crossbeam = only("crossbeam");
    assertThat(count("crossbeam")).isEqualTo(19);
    assertThat(crossbeam.lengthIn()).isEqualTo(84);
    assertThat(from(crossbeam.recesses())).containsExactly(10.1875, 70.1875);
    assertThat(to(crossbeam.recesses())).containsExactly(13.8125, 73.8125);
    assertThat(crossbeam.recesses()).allMatch(each -> each.depthIn() == 0.5);
    assertThat(((EndCut.Shaped) crossbeam.first()).outline())
        .containsExactly(
            new EndCut.Corner(0, 0), new EndCut.Corner(0, 2), new EndCut.Corner(3, 3.5));
    List<Double> marks = lists.setOut().running().get(2).atIn();
    assertThat(marks).hasSize(19).startsWith(2.4375, 12.75, 23.0625).endsWith(188.0625);
  }

  /**
   * Rails: 41 1/4 - 3 1/2 + 2 x 1/2 = 38 3/4. Pickets: from the top of the rail, 24 + 1 3/4 = 25
   * 3/4, to the underside of the header, 82 - 1/2 = 81 1/2: 55 3/4.
   */
  @Test
  void sides() {
    assertThat(count("rail")).isEqualTo(8);
    assertThat(only("rail").lengthIn()).isEqualTo(38.75);
    assertThat(count("picket")).isEqualTo(8);
    assertThat(only("picket").lengthIn()).isEqualTo(55.75);
  }

  /**
   * Posts: 123 + 12 = 135, each out of 144: 10 sticks, a tenth more is 1.
   *
   * <p>Other 4x4: two headers out of 192 each. Rails: two take 77 1/2 + 1/8 + 1/2 + 2 = 80 1/8, out
   * of 96; three 116 1/4 + 1/4 + 2 1/2 = 119, out of 120; four 155 + 3/8 + 2 1/2 = 157 7/8, out of
   * 168. Eight as 3 + 3 + 2 take 120 + 120 + 96 = 336, as 4 + 4 the same, any other way more. All:
   * 384 + 336 = 720, of which 2 x 192 + 8 x 38 3/4 = 694 is in pieces.
   *
   * <p>2x4: a crossbeam and a picket take 139 3/4 + 1/8 + 2 1/2 = 142 3/8, out of 144: eight times.
   * The other eleven crossbeams each out of 96. 8 x 144 + 11 x 96 = 2208; 19 sticks, a tenth more
   * is 2.
   */
  @Test
  void sticks() {
    List<TimberPlan> timber = lists.buying().timber();
    assertThat(timber)
        .extracting(each -> each.stock().size() + each.stock().forTheGround())
        .containsExactly("4x4true", "4x4false", "2x4false");
    assertThat(timber.get(0).cuts())
        .extracting(StickCut::lengthIn, StickCut::times, StickCut::marks)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(144.0, 4, List.of("P1")),
            org.assertj.core.groups.Tuple.tuple(144.0, 6, List.of("P2")));
    assertThat(timber.get(0).spare()).containsExactly(new TimberPlan.Spare(144, 1));
    assertThat(timber.get(1).result().boughtIn()).isEqualTo(720, EXACT);
    assertThat(timber.get(1).result().piecesIn()).isEqualTo(694, EXACT);
    assertThat(timber.get(1).cuts())
        .filteredOn(each -> each.marks().contains("H1"))
        .containsExactly(new StickCut(192, 2, List.of("H1"), true));
    assertThat(timber.get(2).result().boughtIn()).isEqualTo(2208, EXACT);
    assertThat(timber.get(2).cuts())
        .extracting(StickCut::lengthIn, StickCut::times, StickCut::marks)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(144.0, 8, List.of("C1", "T1")),
            org.assertj.core.groups.Tuple.tuple(96.0, 11, List.of("C1")));
    assertThat(timber.get(2).spare()).containsExactly(new TimberPlan.Spare(96, 2));
    assertThat(timber).allMatch(each -> each.result().proven());
  }

  /**
   * Nails: 19 crossbeams on 2 headers, 3 each: 114, a tenth more is 12, one box of 200. Lag screws:
   * 2 at each of 10 posts: 20, and 2. Screws: 8 rails and 8 pickets, both ends, 2 each: 64; 20
   * temporary braces, 4 each, 80; 10 blocks under the headers, 3 each, 30: 174, and 18, two boxes
   * of 100.
   */
  @Test
  void fixings() {
    line("16d common nail", 114, 12, 1);
    line("3/8 in lag screw, 8 in", 20, 2, 22);
    line("3/8 in flat washer", 20, 2, 22);
    line("No. 10 wood screw, 3 in", 174, 18, 2);
  }

  /**
   * A hole of 18 has 254.469 square inches. Gravel, 6 deep, ten holes: 15268 cubic inches or 8.836
   * cubic feet; with a tenth more 9.72, in bags of half a foot 20. Dug, 49 deep: 12469.0 to a hole;
   * put back round a post of 12.25 square inches, 41 deep: 9931.0. Left over 2538.0 to a hole,
   * 14.688 cubic feet from ten, a quarter more when loose: 18.36.
   */
  @Test
  void ground() {
    BuyingLine gravel = line("gravel");
    assertThat(gravel.needed().amount()).isCloseTo(8.836, within(0.001));
    assertThat(gravel.bought()).isEqualTo(20);
    assertThat(line("soil to take away, loose").needed().amount()).isCloseTo(18.36, within(0.005));
    line("flat stone or precast pad, nearly 1'-6\" wide", 10, 0, 10);
  }

  /**
   * Clematis holds wires 8 apart: between 25 3/4 and 81 1/2 there is room for 55 3/4 / 8, that is
   * 6, evenly 55 3/4 / 7 = 7.964 apart. The first lies at 33.714, to the sixteenth 33 11/16. A run
   * is 165 and 6 at either end, 177; twelve are 2124 or 177 ft. Eyes on five posts: 60. Posts are
   * 41 1/4 apart and a light climber wants 36, so each has one: 10.
   */
  @Test
  void climbers() {
    Climbers climbers = lists.climbers();
    assertThat(climbers.plants()).hasSize(10);
    assertThat(climbers.runs()).hasSize(1);
    Climbers.WireRun run = climbers.runs().get(0);
    assertThat(run.heightsIn()).hasSize(6).startsWith(33.6875);
    assertThat(run.lengthIn()).isEqualTo(177);
    assertThat(run.times()).isEqualTo(12);
    assertThat(climbers.wireIn()).isEqualTo(2124, EXACT);
    assertThat(climbers.eyes()).isEqualTo(60);
    line("14 gauge (2.0 mm) galvanized or stainless wire", 177, 18, 2);
  }

  /** What the quarter inch off each tail spares is a joint. */
  @Test
  void spared() {
    assertThat(lists.buying().savings())
        .containsExactly(
            new Saving("headers", "4x4", 192.5, 192, 0, true, java.util.OptionalLong.empty()));
    assertThat(ListCsv.of(lists, ListKind.BUYING, UnitSystem.IMPERIAL))
        .contains("spared,4x4,,,0,,in,\"headers, 16'-0\"\" instead of 16'-0 1/2\"\"\",,,,,,,\n");
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

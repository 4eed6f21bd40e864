package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.design.Point;

/** Wires of climbers: clear of the bolts, and each climber's own. */
class WiresTest {
  private static final double TAPE_IN = 1.0 / 8;

  /** The row says 2 in; measured from the holes of the cut list, the post tops put together. */
  @ParameterizedTest
  @CsvSource({
    "stone-terrace, 0 %, auto, clematis",
    "stone-terrace, 0 %, on-top, honeysuckle",
    "stone-terrace, 10 %, auto, clematis",
    "mower-lane, 4 %, auto, clematis",
  })
  void an_eye_keeps_clear_of_every_bolt(String name, String slope, String header, String vine) {
    Built built =
        Jobs.wish(
            name,
            "site.slope=" + slope,
            "preferences.header=" + header,
            "preferences.footing=bracket",
            "planting[0].vine=" + vine);
    Pieces pieces = Pieces.of(built);
    List<Point> bolts = bolts(pieces);
    assertThat(bolts).isNotEmpty();
    double clearIn = built.shop("wire.clear-of-bolts") - TAPE_IN;
    for (Climbers.WireRun run : new Planting(built).climbers().runs()) {
      if (run.way().equals("level")) {
        for (double heightIn : run.heightsIn()) {
          eyes(built, heightIn, bolts, clearIn);
        }
      }
    }
  }

  private static void eyes(Built built, double heightIn, List<Point> bolts, double clearIn) {
    for (int post = 0; post < built.top().posts(); post++) {
      double upIn = built.top().groundIn(0, post) + heightIn;
      double alongIn = built.top().alongIn(post);
      for (Point bolt : bolts) {
        if (Math.abs(bolt.alongIn() - alongIn) < built.geometry().posts().breadthIn()) {
          assertThat(Math.abs(bolt.upIn() - upIn))
              .as("eye %s over the ground at post %s and bolt %s", heightIn, post, bolt)
              .isGreaterThanOrEqualTo(clearIn);
        }
      }
    }
  }

  private static List<Point> bolts(Pieces pieces) {
    List<Point> bolts = new ArrayList<>();
    for (Piece piece : pieces.of("brace")) {
      for (Place place : piece.places()) {
        piece.shape().bores().forEach(bore -> bolts.add(place.at(bore.atIn())));
      }
    }
    return bolts;
  }

  /** Wisteria winds up upright wires; clematis holds level ones, and thinner. */
  @Test
  void each_of_several_climbers_has_wires_of_its_own() {
    Built built = Jobs.planted("long-walk", "wisteria", "clematis");
    Climbers climbers = new Planting(built).climbers();
    int bays = built.geometry().plan().bays();
    int wired = 0;
    for (Climbers.WireRun run : climbers.runs()) {
      assertThat(run.way()).isEqualTo(run.vine().equals("wisteria") ? "upright" : "level");
      assertThat(run.parts().wire()).contains(run.vine().equals("wisteria") ? "10 gauge" : "14");
      wired += run.way().equals("upright") ? run.times() : bays(run, built);
    }
    assertThat(climbers.runs()).extracting(Climbers.WireRun::vine).contains("wisteria", "clematis");
    assertThat(wired).isEqualTo(2 * bays);
    // Wire is bought by the foot; the turnbuckles or wire tensioners are counted in pieces.
    double boughtFt =
        new Purchase(built, Pieces.of(built), climbers)
            .buying().lines().stream()
                .filter(each -> each.item().contains("wire"))
                .filter(each -> !each.item().contains("tensioner"))
                .mapToDouble(each -> each.needed().amount())
                .sum();
    assertThat(boughtFt).isCloseTo(climbers.wireIn() / 12, within(2.0));
  }

  /** The row of the packs says: of either kind. */
  @Test
  void a_second_kind_of_wire_or_eye_is_bought_in_packs_like_the_first() {
    Built built = Jobs.planted("long-walk", "wisteria", "clematis");
    assertThat(Lists.of(built).buying().lines())
        .filteredOn(each -> each.section().equals("climbers"))
        .filteredOn(each -> !each.item().contains("tensioner"))
        .extracting(BuyingLine::unit)
        .containsExactly("100 ft coil", "100 ft coil", "bag of 25", "bag of 25");
  }

  /** Bays under the level runs of one kind, counted from their length. */
  private static int bays(Climbers.WireRun run, Built built) {
    double lengthIn = run.lengthIn() - 2 * built.shop("wire.tail");
    int each = (int) Math.round(lengthIn / built.geometry().plan().bayIn());
    return each * run.times() / run.heightsIn().size();
  }

  @Test
  void one_climber_is_wired_as_ever_along_the_whole_row() {
    Climbers climbers = new Planting(Jobs.scenario("mower-lane")).climbers();
    assertThat(climbers.runs()).hasSize(1);
    assertThat(climbers.runs().get(0).where()).isEqualTo("each row");
  }
}

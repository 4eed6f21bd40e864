package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/**
 * Over random sites, on level and on falling ground: the numbers of the set-out agree with one
 * another as whoever stakes it out would find them, by tape and level alone.
 */
class StakingPropertyTest {
  @Provide
  Arbitrary<Jobs.Random> jobs() {
    return Jobs.any();
  }

  @Property(tries = 40, seed = "20260603", edgeCases = EdgeCasesMode.NONE)
  void the_set_out_of_any_site_agrees_with_itself(@ForAll("jobs") Jobs.Random job) {
    Jobs.of(job).ifPresent(StakingPropertyTest::check);
  }

  @Tag("slow")
  @Property(tries = 160, seed = "20120714", edgeCases = EdgeCasesMode.NONE)
  void the_set_out_of_many_sites_agrees_with_itself(@ForAll("jobs") Jobs.Random job) {
    Jobs.of(job).ifPresent(StakingPropertyTest::check);
  }

  @Example
  void the_set_out_of_every_scenario_agrees_with_itself() throws java.io.IOException {
    for (String name : PiecesFitPropertyTest.scenarios()) {
      check(Jobs.scenario(name));
    }
  }

  static void check(Built built) {
    Pieces pieces = Pieces.of(built);
    SetOut setOut = new SettingOut(built, pieces).setOut();
    double tickIn = built.tape().tickIn() + 1e-6;
    Map<String, SetOut.PostMark> posts = new HashMap<>();
    setOut.posts().forEach(each -> posts.put(each.name(), each));
    assertThat(posts).hasSize(pieces.count("post"));
    diagonals(setOut, posts, tickIn);
    bays(built, setOut, tickIn);
    setOut.posts().forEach(each -> heights(built, setOut, each, tickIn));
    setOut.posts().forEach(each -> marks(pieces, each, tickIn));
    headers(built, setOut, pieces);
  }

  /** Pythagoras on the coordinates of the stakes. */
  private static void diagonals(SetOut setOut, Map<String, SetOut.PostMark> posts, double tickIn) {
    for (SetOut.Diagonal each : setOut.diagonals()) {
      SetOut.PostMark from = posts.get(each.from());
      SetOut.PostMark to = posts.get(each.to());
      double alongIn = to.alongIn() - from.alongIn();
      double acrossIn = to.acrossIn() - from.acrossIn();
      assertThat(each.lengthIn())
          .as("%s to %s", each.from(), each.to())
          .isCloseTo(Math.sqrt(alongIn * alongIn + acrossIn * acrossIn), within(1.5 * tickIn));
    }
  }

  /** Spacers and posts in turn are as long as the row; the bays add up to the walk. */
  private static void bays(Built built, SetOut setOut, double tickIn) {
    double postIn = built.geometry().posts().breadthIn();
    int bays = built.geometry().plan().bays();
    List<SetOut.PostMark> rowA =
        setOut.posts().stream().filter(each -> each.name().startsWith("A")).toList();
    double lengthIn = rowA.get(bays).alongIn();
    double addedIn = 0;
    for (int bay = 0; bay < bays; bay++) {
      addedIn += rowA.get(bay + 1).alongIn() - rowA.get(bay).alongIn();
    }
    assertThat(addedIn).isCloseTo(lengthIn, within(1e-6));
    int last = setOut.spacers().size() - 1;
    List<SetOut.Spacer> inRows = setOut.spacers().subList(0, last);
    double spacersIn = inRows.stream().mapToDouble(each -> each.lengthIn() * each.count()).sum();
    assertThat(spacersIn / 2 + postIn * bays).isCloseTo(lengthIn, within(bays * tickIn));
    assertThat(inRows.stream().mapToInt(SetOut.Spacer::count).sum()).isEqualTo(2 * bays);
    assertThat(setOut.spacers().get(last).lengthIn() + postIn)
        .isCloseTo(setOut.posts().get(bays + 1).acrossIn(), within(tickIn));
  }

  /** Down from the level line to the hole, up again through bed and post to the top. */
  private static void heights(Built built, SetOut setOut, SetOut.PostMark post, double tickIn) {
    double lineIn = setOut.ground().lineOverDatumIn();
    double lowerIn = post.name().startsWith("B") ? built.top().acrossIn() : 0;
    double groundBelowLineIn = lineIn + built.slopeRatio() * post.alongIn() + lowerIn;
    assertThat(post.bottomBelowLineIn() - post.digIn())
        .as("ground at %s", post.name())
        .isCloseTo(groundBelowLineIn, within(1.5 * tickIn));
    assertThat(post.footBelowLineIn() + post.topOverLineIn())
        .as("length of %s", post.name())
        .isCloseTo(post.lengthIn(), within(1e-6));
    int index = Integer.parseInt(post.name().substring(1)) - 1;
    assertThat(post.topOverLineIn())
        .as("top of %s, which is level with the others where the top is", post.name())
        .isCloseTo(built.top().topIn(index) - lineIn, within(tickIn / 2 + 1e-6));
    if (built.inTheGround()) {
      assertThat(post.bottomBelowLineIn() - post.footBelowLineIn())
          .as("bed under %s", post.name())
          .isCloseTo(setOut.ground().bedIn(), within(1e-6));
      assertThat(post.topOverLineIn() + post.bottomBelowLineIn())
          .as("top of %s less the bottom of its hole", post.name())
          .isCloseTo(post.lengthIn() + setOut.ground().bedIn(), within(1e-6));
    }
    assertThat(post.onGroundIn())
        .isCloseTo(
            Math.hypot(post.alongIn(), built.slopeRatio() * post.alongIn()), within(1.5 * tickIn));
  }

  /** The piece named for a stake is long enough for it, and no longer than its sloping top. */
  private static void marks(Pieces pieces, SetOut.PostMark post, double tickIn) {
    Piece piece =
        pieces.of("post").stream()
            .filter(each -> each.mark().equals(post.mark()))
            .findFirst()
            .orElseThrow();
    double pointIn =
        piece.shape().last() instanceof EndCut.Sloping sloping ? sloping.setBackIn() / 2 : 0;
    assertThat(piece.shape().lengthIn())
        .as("%s at %s", post.mark(), post.name())
        .isCloseTo(post.lengthIn() + pointIn, within(2 * tickIn));
  }

  /** Every piece of header is named once, and each line is as long as its pieces. */
  private static void headers(Built built, SetOut setOut, Pieces pieces) {
    assertThat(setOut.headers()).hasSize(built.paired() ? 4 : 2);
    Map<String, Integer> named = new HashMap<>();
    for (SetOut.HeaderLine line : setOut.headers()) {
      for (String piece : line.pieces()) {
        named.merge(piece.replace(" turned", ""), 1, Integer::sum);
      }
    }
    Map<String, Integer> counted = new HashMap<>();
    pieces.of("header").forEach(each -> counted.put(each.mark(), each.count()));
    assertThat(named).isEqualTo(counted);
  }
}

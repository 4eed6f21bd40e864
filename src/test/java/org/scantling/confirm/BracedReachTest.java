package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.MemberResult;

/** One person works nothing far away harder than what is looked at near every place tried. */
class BracedReachTest {
  private static final List<ToDoubleFunction<BracedPostForces>> POST =
      List.of(
          BracedPostForces::pressedLb,
          BracedPostForces::pulledLb,
          BracedPostForces::momentInLb,
          BracedPostForces::kneeMomentInLb,
          BracedPostForces::shearLb,
          BracedPostForces::headPullLb,
          forces -> -forces.headPullLb(),
          BracedPostForces::headSideLb);

  private static final List<ToDoubleFunction<MemberResult>> MEMBER =
      List.of(
          member -> member.mostTension().amount(),
          member -> -member.mostCompression().amount(),
          member -> member.largestMoment().amount(),
          member -> -member.largestMoment().amount(),
          member -> Math.abs(member.largestShear().amount()));

  private static BracedWay row(String pieces, double braceBreadthIn, double windLb) {
    Splice splice = Splice.of(pieces);
    Geometry geometry = BracedExample.geometry(splice.bayCount());
    BracedTimbers timbers = BracedExample.timbers(braceBreadthIn);
    HeaderChecks headers = BracedExample.headers(geometry, timbers).inPieces(splice);
    return new BracedWalk(geometry, timbers, headers, BracedExample.TOP, BracedExample.wind(windLb))
        .along();
  }

  private static Map<LoadCombination, Double> most(
      BracedWay way, ToDoubleFunction<BracedCase> ofOne) {
    Map<LoadCombination, Double> most = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      most.merge(each.combination(), ofOne.applyAsDouble(each), Math::max);
    }
    return most;
  }

  private static double most(
      BracedCase each, List<String> members, ToDoubleFunction<MemberResult> measure) {
    return members.stream()
        .mapToDouble(name -> measure.applyAsDouble(each.all().member(name)))
        .max()
        .orElseThrow();
  }

  private static void same(
      Map<LoadCombination, Double> near, Map<LoadCombination, Double> everywhere) {
    everywhere.forEach(
        (combination, amount) ->
            assertThat(near.get(combination))
                .as(combination.id())
                .isCloseTo(amount, within(1e-9 * Math.max(1, Math.abs(amount)))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"8", "2+2+2+2+2", "5+5+5+5", "4+4+2", "1+1+1+1+1+1"})
  void the_worst_of_the_whole_row_stands_near_a_person_or_without_one(String pieces) {
    for (double braceBreadthIn : new double[] {1.5, 3.5, 7.25}) {
      for (double windLb : new double[] {0, 150, 900}) {
        theWorstStandsNear(row(pieces, braceBreadthIn, windLb));
      }
    }
  }

  private static void theWorstStandsNear(BracedWay row) {
    BracedReach whole = row.plane().whole();
    assertThat(row.cases()).anyMatch(each -> each.reach().posts().size() < whole.posts().size());

    for (ToDoubleFunction<BracedPostForces> measure : POST) {
      same(
          most(row, each -> worst(each, each.reach().posts(), measure)),
          most(row, each -> worst(each, whole.posts(), measure)));
    }
    for (ToDoubleFunction<MemberResult> measure : MEMBER) {
      same(
          most(row, each -> most(each, each.reach().braces(), measure)),
          most(row, each -> most(each, whole.braces(), measure)));
      same(
          most(row, each -> most(each, each.reach().pieces(), measure)),
          most(row, each -> most(each, whole.pieces(), measure)));
      same(
          most(row, each -> most(each, each.reach().betweenTails(), measure)),
          most(row, each -> most(each, whole.betweenTails(), measure)));
    }
  }

  private static double worst(
      BracedCase each, List<Integer> posts, ToDoubleFunction<BracedPostForces> measure) {
    return posts.stream()
        .mapToDouble(post -> measure.applyAsDouble(each.on(post)))
        .max()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"8", "5+5+5+5"})
  void all_of_a_row_is_every_post_brace_and_piece_of_it(String pieces) {
    BracedWay row = row(pieces, 3.5, 150);
    int posts = Splice.of(pieces).bayCount() + 1;

    assertThat(row.plane().whole().posts())
        .containsExactlyElementsOf(IntStream.range(0, posts).boxed().toList());
    assertThat(row.plane().whole().braces()).hasSize(2 * posts - 2);
    assertThat(row.plane().whole().pieces()).containsExactlyElementsOf(row.plane().beam().pieces());
  }
}

package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.scantling.design.Site;
import org.scantling.engine.CachingEngines;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;

/**
 * What the engine keeps from pass to pass and from run to run changes no answer, no reason and no
 * digit. Sites come in pairs that differ in one demand, as a search for thresholds tries them.
 */
class KeptResultsPropertyTest {
  private static final CachingEngines ENGINES = new CachingEngines(House.RULES, House.TABLES);

  @Provide
  Arbitrary<Wish> wishes() {
    return RandomWish.any();
  }

  @Provide
  Arbitrary<MoreAsked> demands() {
    return Arbitraries.of(MoreAsked.values());
  }

  @Property(tries = 5, seed = "20261005", edgeCases = EdgeCasesMode.NONE)
  void what_is_kept_changes_nothing(
      @ForAll("wishes") Wish wish, @ForAll("demands") MoreAsked demand) {
    changesNothing(wish, demand);
  }

  @Tag("slow")
  @Property(tries = 45, seed = "20110611", edgeCases = EdgeCasesMode.NONE)
  void what_is_kept_changes_nothing_on_many_sites(
      @ForAll("wishes") Wish wish, @ForAll("demands") MoreAsked demand) {
    changesNothing(wish, demand);
  }

  private static void changesNothing(Wish wish, MoreAsked demand) {
    check(wish);
    demand.of(wish, 0.5).ifPresent(KeptResultsPropertyTest::check);
  }

  /** On brackets most checks that a search puts off are of frames. */
  @Property(tries = 6, seed = "20261130", edgeCases = EdgeCasesMode.NONE)
  void a_search_is_answered_the_same_on_brackets(@ForAll("wishes") Wish wish) {
    sameOnBrackets(wish);
  }

  @Tag("slow")
  @Property(tries = 20, seed = "20120718", edgeCases = EdgeCasesMode.NONE)
  void a_search_is_answered_the_same_on_many_brackets(@ForAll("wishes") Wish wish) {
    sameOnBrackets(wish);
  }

  private static void sameOnBrackets(Wish wish) {
    Wish.Choices any = wish.choices();
    Site site =
        wish.choices(
                new Wish.Choices(
                    "bracket", any.header(), any.embedmentBasis(), any.risk(), any.snowShare()))
            .over(House.base("kiwi-court"));
    sameAnswers(ENGINES.oneRun(site), ENGINES.answers(site));
  }

  private static void check(Wish wish) {
    Proposal anew = ENGINES.anew(wish.over(House.roseGate()));
    assertThat(ENGINES.oneRun(wish.over(House.roseGate()))).isEqualTo(anew);
    assertThat(ENGINES.manyRuns(wish.over(House.roseGate()))).isEqualTo(anew);
    assertThat(ENGINES.manyRuns(wish.over(House.roseGate()))).isEqualTo(anew);
    sameAnswers(anew, ENGINES.answers(wish.over(House.roseGate())));
  }

  /**
   * A search lays out no more sizes and joints than it needs, and works no more of their checks; it
   * answers the same for the same reason, and only does not tell of all others that would not do.
   */
  private static void sameAnswers(Proposal told, Proposal answered) {
    assertThat(answered.proposed()).isEqualTo(told.proposed());
    if (!told.proposed()) {
      assertThat(answered.result()).isEqualTo(told.result());
    }
    assertThat(answered.decisions()).hasSameSizeAs(told.decisions());
    assertThat(told.decisions())
        .zipSatisfy(answered.decisions(), KeptResultsPropertyTest::sameAnswer);
  }

  private static void sameAnswer(Decision told, Decision answered) {
    assertThat(answered.question()).isEqualTo(told.question());
    assertThat(answered.proposed()).isEqualTo(told.proposed());
    assertThat(answered.reasons()).isEqualTo(told.reasons());
    assertThat(options(told)).containsAll(options(answered));
  }

  private static List<String> options(Decision decision) {
    return decision.rejected().stream()
        .map(each -> ((Finding.Reject) each.finding()).option())
        .toList();
  }
}

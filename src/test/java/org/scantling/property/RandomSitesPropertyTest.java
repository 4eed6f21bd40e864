package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import org.scantling.engine.CountedEngine;
import org.scantling.reasons.Proposal;

/**
 * Random sites on the bases that ship. Every site is nudged in one demand after the other, so that
 * the slow ones and those of a default run come to some 2,300 sites; {@code -Dsites=20000} runs
 * that many more. What they came to is left in {@code target/random-sites}.
 */
class RandomSitesPropertyTest {
  private static final int MOST_PASSES = 24;
  private static final CountedEngine ENGINE = new CountedEngine(House.RULES, House.TABLES);
  private static final Tally TALLY = new Tally();

  @Provide
  Arbitrary<Wish> wishes() {
    return RandomWish.any();
  }

  @Property(tries = 12, seed = "20260822", edgeCases = EdgeCasesMode.NONE)
  void more_of_one_demand_never_gives_less(
      @ForAll("wishes") Wish wish, @ForAll("shares") double share, @ForAll("bases") String base) {
    neverLess(wish, share, base);
  }

  @Tag("slow")
  @Property(tries = 110, seed = "20120517", edgeCases = EdgeCasesMode.NONE)
  void more_of_one_demand_never_gives_less_on_many_sites(
      @ForAll("wishes") Wish wish, @ForAll("shares") double share, @ForAll("bases") String base) {
    neverLess(wish, share, base);
  }

  private static void neverLess(Wish wish, double share, String base) {
    TALLY.add("sites asked more of");
    Proposal less = sound(wish, base);
    for (MoreAsked demand : MoreAsked.values()) {
      Optional<Wish> nudged = demand.of(wish, share);
      if (nudged.isPresent()) {
        Pair pair = new Pair(less, sound(nudged.get(), base));
        compare(demand, pair, wish, nudged.get(), braced(wish, base));
      }
    }
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, 1);
  }

  @Provide
  Arbitrary<String> bases() {
    return Arbitraries.of(House.BASES);
  }

  @Property(tries = 20, seed = "19770301", edgeCases = EdgeCasesMode.NONE)
  void the_same_site_twice_gives_the_same_proposal(
      @ForAll("wishes") Wish wish, @ForAll("bases") String base) {
    sameTwice(wish, base);
  }

  @Tag("slow")
  @Property(tries = 80, seed = "20120717", edgeCases = EdgeCasesMode.NONE)
  void the_same_site_twice_gives_the_same_proposal_on_many_sites(
      @ForAll("wishes") Wish wish, @ForAll("bases") String base) {
    sameTwice(wish, base);
  }

  private static void sameTwice(Wish wish, String base) {
    assertThat(ENGINE.propose(wish.over(House.base(base))))
        .isEqualTo(House.propose(wish, House.base(base)));
  }

  @Example
  void every_site_of_a_long_run_is_answered_soundly() {
    RandomGenerator<Wish> wishes = RandomWish.any().generator(1000);
    Random random = new Random(Long.getLong("seed", 48));
    int sites = Integer.getInteger("sites", 30);
    Tally tally = new Tally();
    for (int i = 0; i < sites; i++) {
      Wish wish = wishes.next(random).value();
      tally.add(Answered.of(sound(wish, House.BASES.get(i % House.BASES.size()))));
    }
    tally.most("passes at most", ENGINE.most());
    tally.keep("long-run.txt");
    assertThat(tally.of("proposed")).isGreaterThan(sites / 2);
  }

  @AfterContainer
  static void enough_pairs_were_compared_and_no_pass_limit_was_near() {
    TALLY.most("passes at most", ENGINE.most());
    TALLY.keep("pairs.txt");
    int compared = TALLY.startingWith("compared");
    assertThat(compared).isGreaterThan(TALLY.of("sites asked more of") * 5 / 2);
    // Bays that grow with the way lead nowhere a little more often, and then another number is
    // taken.
    assertThat(TALLY.startingWith("skipped")).isLessThanOrEqualTo(compared / 7);
    assertThat(ENGINE.most()).isBetween(2, MOST_PASSES / 2);
  }

  private static Proposal sound(Wish wish, String base) {
    Proposal proposal = ENGINE.propose(wish.over(House.base(base)));
    SoundProposal.check(wish, proposal);
    return proposal;
  }

  private static boolean braced(Wish wish, String base) {
    return wish.choices().footing().equals("bracket")
        || (wish.choices().footing().equals("auto")
            && House.base(base).posts().footing().equals("bracket"));
  }

  private static void compare(MoreAsked demand, Pair pair, Wish less, Wish more, boolean braced) {
    if (braced && pair.rescued()) {
      TALLY.add("cured on brackets by more " + demand);
      return;
    }
    if (demand == MoreAsked.CLEAR_WIDTH && pair.rescued()) {
      // A wider way meets other stock lengths: its crossbeams may end shorter past the headers.
      TALLY.add("cured by other tails, more " + demand);
      return;
    }
    if (demand == MoreAsked.FROST && pair.rescued() && dugPastAnyForSway(more)) {
      // A deeper foot turns less, and past that depth none would be dug for the sway alone.
      assertThat(pair.rescuedByFoot()).as("what stopped it%n%s%n%s", less, more).isTrue();
      TALLY.add("cured by a deeper foot, more " + demand);
      return;
    }
    if (pair.rescued() && less.layout().rockIn() > 0) {
      // A hole that goes down to the rock is filled with concrete and may do where a shorter one
      // in soil did not.
      TALLY.add("cured on rock by more " + demand);
      return;
    }
    assertThat(pair.rescued()).as("%s cures a refusal%n%s%n%s", demand, less, more).isFalse();
    if (!pair.bothProposed()) {
      TALLY.add("refused " + demand);
    } else if (!pair.sameLayout()) {
      TALLY.add("skipped, another layout " + demand);
    } else if (demand == MoreAsked.CLEAR_WIDTH && braced) {
      // Statics: two rows further apart need less push and pull to hold the same wind upright.
      TALLY.add("skipped, a wider frame is racked less " + demand);
    } else if (pair.shorterTail()) {
      TALLY.add("skipped, shorter tail " + demand);
    } else if (pair.deeperStack()) {
      TALLY.add("skipped, deeper stack " + demand);
    } else if (demand == MoreAsked.FROST && pair.deeperFoot() && dugPastAnyForSway(more)) {
      TALLY.add("skipped, a deeper foot turns less " + demand);
    } else {
      TALLY.add("compared " + demand);
      TALLY.add((pair.depthsCompare() ? "depths compared " : "depths differ in kind ") + demand);
      assertThat(pair.shrunk()).as("more %s%n%s%n%s", demand, less, more).isEmpty();
    }
  }

  /** True where frost alone asks for more depth than is dug before a stouter post is taken. */
  private static boolean dugPastAnyForSway(Wish wish) {
    return wish.climate().frostIn() > House.TABLES.thumb("footing.deeper-than-stouter").amount();
  }
}

package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.design.Site;
import org.scantling.engine.Scenarios;
import org.scantling.intake.Intake;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Change;
import org.scantling.reasons.Decision;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Wanted;
import org.scantling.reasons.Way;
import org.scantling.search.DemandedSite;
import org.scantling.search.LeastChangeSearch;
import org.scantling.words.Choices;
import org.scantling.words.Words;

/**
 * Every suggested change, run again by an engine that remembers nothing, does bring the wanted
 * answer, and no smaller change of its kind does. Each run of the test takes some of the changed
 * sizes of all sites; {@code -Dleast=all} takes all, and {@code -Dseed=} others.
 */
class LeastChangePropertyTest {
  private static final boolean ALL = "all".equals(System.getProperty("least"));
  private static final int NEARER = 6;

  private static final Predicate<Intake> ALMSHOUSES =
      site -> site.site().title().equals("Step-free walk at the almshouses");

  private final Random random = new Random(Long.getLong("seed", 20140503));
  private int singles;
  private int pairs;

  /** What somebody may want back: what the base has and the site does not get. */
  private record Wish(Intake site, Question question, Outcome base) {}

  @Test
  void every_suggestion_does_what_it_says_and_nothing_smaller_does() {
    // One that two changes together grant.
    check(
        wishes(ALMSHOUSES).filter(each -> each.question() == Question.POST_SIZE).limit(1).toList());
    assertThat(singles).isPositive();
    assertThat(pairs).isPositive();
  }

  @Test
  @Tag("slow")
  void every_suggestion_on_some_sites_does_what_it_says_and_nothing_smaller_does() {
    check(some(wishes(site -> true).toList(), 3));
    assertThat(singles).isPositive();
  }

  private void check(List<Wish> some) {
    for (Wish wish : some) {
      LeastChange least =
          new LeastChangeSearch(House.engine(), House.TABLES)
              .of(wish.site().site(), wish.site().defaulted(), wish.question(), wish.base());
      assertThat(least.kept()).isFalse();
      least.singles().forEach(way -> single(wish, least.wanted(), way));
      least.pairs().forEach(way -> pair(wish, least.wanted(), way));
    }
  }

  private static Stream<Wish> wishes(Predicate<Intake> which) {
    Choices choices = Words.load(House.TABLES).choices();
    return new Scenarios().sites().stream().filter(which).flatMap(site -> wishes(site, choices));
  }

  private static Stream<Wish> wishes(Intake site, Choices choices) {
    Proposal today = Scenarios.proposal(site);
    return (today.proposed() ? today.decisions() : List.<Decision>of())
        .stream()
            .filter(each -> choices.find(each.question()).filter(Choices.Row::back).isPresent())
            .filter(each -> each.changed() && each.base().isPresent())
            .map(each -> new Wish(site, each.question(), each.base().get()));
  }

  private void single(Wish wish, Wanted wanted, Way way) {
    assertThat(way.changes()).hasSize(1);
    Change change = way.changes().get(0);

    assertThat(met(wanted, changed(wish, change))).as("%s", way.changes()).isTrue();
    for (Outcome nearer : some(nearer(change), NEARER)) {
      assertThat(met(wanted, with(wish.site().site(), change, nearer)))
          .as("%s, but %s does as well", change, nearer)
          .isFalse();
    }
    singles++;
  }

  private void pair(Wish wish, Wanted wanted, Way way) {
    Change one = way.changes().get(0);
    Change other = way.changes().get(1);
    Site both = with(changed(wish, one), other, other.to());

    assertThat(way.changes()).hasSize(2).allMatch(Change::choice);
    assertThat(met(wanted, both)).as("%s", way.changes()).isTrue();
    assertThat(met(wanted, changed(wish, one))).as("%s alone", one).isFalse();
    assertThat(met(wanted, changed(wish, other))).as("%s alone", other).isFalse();
    stepLess(one)
        .ifPresent(
            less ->
                assertThat(met(wanted, with(changed(wish, other), one, less)))
                    .as("%s, a step less", one)
                    .isFalse());
    stepLess(other)
        .ifPresent(
            less ->
                assertThat(met(wanted, with(changed(wish, one), other, less)))
                    .as("%s, a step less", other)
                    .isFalse());
    pairs++;
  }

  private static Site changed(Wish wish, Change change) {
    return with(wish.site().site(), change, change.to());
  }

  private static Site with(Site site, Change change, Outcome value) {
    return DemandedSite.with(site, change.demand().path(), value);
  }

  private static boolean met(Wanted wanted, Site site) {
    return wanted.met(House.propose(site));
  }

  /** The steps between today's value and the suggested one; none between words. */
  private static List<Outcome> nearer(Change change) {
    List<Outcome> nearer = new ArrayList<>();
    if (change.to() instanceof Outcome.Amount to) {
      double stepAmount = step(change);
      double from = ((Outcome.Amount) change.from()).measure().amount();
      double away = to.measure().amount() - from;
      for (int i = 1; i < Math.round(Math.abs(away) / stepAmount); i++) {
        nearer.add(amount(to, from + Math.signum(away) * i * stepAmount));
      }
    }
    return nearer;
  }

  private static Optional<Outcome> stepLess(Change change) {
    List<Outcome> nearer = nearer(change);
    return nearer.isEmpty() ? Optional.empty() : Optional.of(nearer.get(nearer.size() - 1));
  }

  private static double step(Change change) {
    return House.TABLES.demands().row(change.demand().path()).scale().orElseThrow().step().amount();
  }

  private static Outcome amount(Outcome.Amount like, double amount) {
    return new Outcome.Amount(new Measure(amount, like.measure().unit()));
  }

  private <T> List<T> some(List<T> all, int most) {
    if (ALL) {
      return all;
    }
    List<T> shuffled = new ArrayList<>(all);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, Math.min(most, shuffled.size()));
  }
}

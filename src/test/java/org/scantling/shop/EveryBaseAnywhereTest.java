package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.Tag;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.print.PrintOptions;
import org.scantling.print.ProposedDesign;
import org.scantling.print.TextPage;
import org.scantling.property.House;
import org.scantling.property.RandomWish;
import org.scantling.property.SoundProposal;
import org.scantling.property.Wish;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/**
 * Each base that ships, on sites drawn by lot: every proposal passes its own checks, its pieces fit
 * together, all its lists can be written; and what is proposed is a base again, which finds its way
 * back to the place where the first one stands. {@code -DbaseSites=2000} takes that many of each,
 * {@code -DbaseSeed=} others.
 */
class EveryBaseAnywhereTest {
  private static final int SITES = Integer.getInteger("baseSites", 6);
  private static final long SEED = Long.getLong("baseSeed", 20040611);
  private static final PrintOptions PLAIN = PrintOptions.plain(UnitSystem.IMPERIAL);
  private static final List<Question> SIZES =
      List.of(Question.CROSSBEAM_SIZE, Question.HEADER_SIZE, Question.POST_SIZE);

  @Example
  void the_rose_gate_anywhere() {
    isAnsweredSoundlyAndABaseAgain("rose-gate");
  }

  @Example
  void the_hop_walk_anywhere() {
    isAnsweredSoundlyAndABaseAgain("hop-walk");
  }

  @Example
  void the_kiwi_court_anywhere() {
    isAnsweredSoundlyAndABaseAgain("kiwi-court");
  }

  @Example
  void the_station_yard_anywhere() {
    isAnsweredSoundlyAndABaseAgain("station-yard");
  }

  @Example
  void the_vineyard_porch_anywhere() {
    isAnsweredSoundlyAndABaseAgain("vineyard-porch");
  }

  @Tag("slow")
  @Example
  void every_base_on_more_sites() {
    House.BASES.forEach(name -> isAnsweredSoundlyAndABaseAgain(name, 4 * SITES));
  }

  private static void isAnsweredSoundlyAndABaseAgain(String name) {
    isAnsweredSoundlyAndABaseAgain(name, SITES);
  }

  private static void isAnsweredSoundlyAndABaseAgain(String name, int sites) {
    BaseDesign base = House.base(name);
    RandomGenerator<Wish> wishes = RandomWish.any().generator(1000);
    Random random = new Random(SEED + name.hashCode());
    int proposed = 0;
    for (int i = 0; i < sites; i++) {
      Wish wish = wishes.next(random).value();
      try {
        proposed += soundly(base, wish) ? 1 : 0;
      } catch (AssertionError wrong) {
        throw new AssertionError(name + ", site " + i + ": " + wish, wrong);
      }
    }
    assertThat(proposed).as("of %s sites", sites).isGreaterThan(sites / 4);
  }

  /** True for a proposal, false for a refusal. */
  private static boolean soundly(BaseDesign base, Wish wish) {
    Site site = wish.over(base);
    Proposal proposal = House.propose(site);
    SoundProposal.check(wish, proposal);
    if (proposal.proposed()) {
      listed(proposal, site);
      goesHome(base, ProposedDesign.of(proposal, base));
    }
    return proposal.proposed();
  }

  private static void listed(Proposal proposal, Site site) {
    new Fitting(new Built(proposal, site, House.TABLES, Optional.empty())).check();
    Lists lists = Lists.of(proposal, site, House.TABLES, Optional.empty());
    for (ListKind kind : ListKind.values()) {
      assertThat(TextPage.print(ListPages.of(lists, kind, UnitSystem.IMPERIAL), PLAIN))
          .as(kind.toString())
          .isNotBlank();
    }
  }

  /**
   * On the ground of the first base what was built elsewhere is built with the first one's sizes,
   * or keeps its own, or says which check stopped the smaller.
   */
  private static void goesHome(BaseDesign first, BaseDesign built) {
    Proposal home = House.propose(at(first, built));
    if (!home.proposed()) {
      return;
    }
    for (Question question : SIZES) {
      Decision decision = home.decision(question).orElseThrow();
      String size = ((Outcome.Word) decision.proposed()).text();
      assertThat(
              size.equals(size(first, question))
                  || size.equals(size(built, question))
                  || otherwise(home, built)
                  || decision.reasons().get(0).finding() instanceof Finding.Reject)
          .as("%s of %s, built %s", question, size, size(built, question))
          .isTrue();
    }
  }

  /** Headers carried otherwise are of another kind; that has a decision and a reason of its own. */
  private static boolean otherwise(Proposal home, BaseDesign built) {
    Decision style = home.decision(Question.HEADER_STYLE).orElseThrow();
    return !((Outcome.Word) style.proposed()).text().equals(built.headers().style());
  }

  /** A base on the site where another has stood. */
  private static Site at(BaseDesign first, BaseDesign built) {
    BaseDesign.Posts posts = first.posts();
    Wish plain = Wish.plain().length(posts.bayIn() * posts.bays());
    Site site = plain.over(built);
    return first
        .proven()
        .map(
            stood ->
                new Site(
                    "Home",
                    built,
                    stood.climate(),
                    new Site.Ground(stood.soil(), stood.slopePercent()),
                    new Site.Walkway(
                        posts.bayIn() * posts.bays(),
                        OptionalDouble.empty(),
                        List.of(),
                        OptionalDouble.empty()),
                    stood.vine().map(vine -> List.of(new Site.Planting(vine))).orElse(List.of()),
                    first.materials().orElse(site.materials()),
                    site.preferences()))
        .orElse(site);
  }

  private static String size(BaseDesign design, Question question) {
    boolean paired = design.headers().style().equals("paired");
    return switch (question) {
      case POST_SIZE -> design.posts().size();
      case CROSSBEAM_SIZE -> design.crossbeams().size();
      default -> (paired ? "2-" : "") + design.headers().size();
    };
  }
}

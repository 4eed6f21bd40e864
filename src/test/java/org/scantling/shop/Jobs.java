package org.scantling.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.property.House;
import org.scantling.property.RandomWish;
import org.scantling.property.Wish;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.tables.Yard;

/** Proposals to make lists of: scenarios, and random sites on ground that falls or does not. */
final class Jobs {
  private static final Map<String, Built> SCENARIOS = new ConcurrentHashMap<>();

  private Jobs() {}

  /** A list as it is printed, on one line. */
  static String page(Built built, ListKind kind) {
    return TextPage.print(
            ListPages.of(Lists.of(built), kind, UnitSystem.IMPERIAL),
            PrintOptions.plain(UnitSystem.IMPERIAL))
        .replaceAll("\\s+", " ");
  }

  /** A scenario by its name; worked once for all tests. */
  static Built scenario(String name) {
    return SCENARIOS.computeIfAbsent(name, each -> built(site(each), Optional.empty()));
  }

  /** The same, bought from a yard with a list of its own. */
  static Built scenario(String name, Yard yard) {
    return built(site(name), Optional.of(yard));
  }

  /** The same with other tails on the crossbeams of its base, and some things set otherwise. */
  static Built ended(String name, Optional<BaseDesign.EndCut> endCut, String... wishes) {
    Site site = site(name, wishes);
    BaseDesign base = site.base();
    BaseDesign.Crossbeams proven = base.crossbeams();
    BaseDesign.Crossbeams other =
        new BaseDesign.Crossbeams(
            proven.size(), proven.count(), proven.overhangIn(), proven.notchIn(), endCut);
    return built(
        new Site(
            site.title(),
            new BaseDesign(
                base.title(),
                base.proven(),
                base.posts(),
                base.headers(),
                other,
                base.sidePanels(),
                base.braces()),
            site.climate(),
            site.ground(),
            site.walkway(),
            site.planting(),
            site.materials(),
            site.preferences()),
        Optional.empty());
  }

  /** A scenario with some things set otherwise. */
  static Built wish(String name, String... wishes) {
    return built(site(name, wishes), Optional.empty());
  }

  /** The same, where it comes to anything. */
  static Optional<Built> ifProposed(String name, String... wishes) {
    return ifProposed(site(name, wishes), Optional.empty());
  }

  /** A scenario with other climbers. */
  static Built planted(String name, String... vines) {
    Site site = site(name);
    List<Site.Planting> planting = new ArrayList<>();
    for (String vine : vines) {
      planting.add(new Site.Planting(vine));
    }
    return built(
        new Site(
            site.title(),
            site.base(),
            site.climate(),
            site.ground(),
            site.walkway(),
            planting,
            site.materials(),
            site.preferences()),
        Optional.empty());
  }

  /** What the engine proposes for a scenario. */
  static Proposal proposal(String name) {
    return House.propose(site(name));
  }

  /** The same, of timber from a yard with a list of its own. */
  static Proposal proposal(String name, Yard yard) {
    return House.propose(site(name), Optional.of(yard));
  }

  private static Site site(String name, String... wishes) {
    List<Setting> settings = Stream.of(wishes).map(Setting::parse).toList();
    return new SiteReader(Vocabulary.of(House.TABLES))
        .read(Path.of("scenarios", name + ".yaml"), settings)
        .site();
  }

  private static Built built(Site site, Optional<Yard> yard) {
    return new Built(House.propose(site, yard), site, House.TABLES, yard);
  }

  /** What a wish comes to on a base, where it comes to anything. */
  static Optional<Built> of(Random one) {
    return of(one, Optional.empty());
  }

  /** The same, bought from a yard with a list of its own. */
  static Optional<Built> of(Random one, Optional<Yard> yard) {
    return ifProposed(one.site(), yard);
  }

  private static Optional<Built> ifProposed(Site site, Optional<Yard> yard) {
    Proposal proposal = House.propose(site);
    return proposal.proposed()
        ? Optional.of(new Built(proposal, site, House.TABLES, yard))
        : Optional.empty();
  }

  /** A random site, its base, and how its ground falls. */
  record Random(Wish wish, String base, double slopePercent, String market) {
    Site site() {
      Site flat = wish.over(House.base(base));
      return flat.with(flat.ground().falling(slopePercent))
          .with(
              new Site.Materials(
                  flat.materials().species(), flat.materials().grade(), Optional.of(market)));
    }
  }

  /** Walks on brackets, on level and on falling ground, where the wind lets some of them stand. */
  static Arbitrary<Random> braced() {
    return any().map(Jobs::onBrackets);
  }

  private static Random onBrackets(Random one) {
    Wish wish = one.wish();
    Wish.Choices how = wish.choices();
    Wish mild =
        new Wish(
            wish.lengthIn(),
            0,
            List.of(),
            wish.headroomIn(),
            new Wish.Climate(wish.climate().frostIn(), wish.climate().snowPsf() / 3, 90, "B"),
            wish.soil(),
            "honeysuckle",
            new Wish.Timber("southern-pine", "No.2"),
            new Wish.Choices(
                "bracket", how.header(), how.embedmentBasis(), how.risk(), how.snowShare()));
    return new Random(mild, one.base(), one.slopePercent(), one.market());
  }

  static Arbitrary<Random> any() {
    return Combinators.combine(
            RandomWish.any(),
            Arbitraries.of(House.BASES),
            Arbitraries.of(0.0, 0.0, 0.4, 2.0, 4.5, 7.9, 8.0, 12.0, 20.0),
            Arbitraries.of("north-america", "north-america", "metric"))
        .as(Random::new);
  }
}

package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.scantling.depths.DepthCase;
import org.scantling.depths.DepthRow;
import org.scantling.depths.DepthTables;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** Hole depths on random sites: what a proposal digs, and never less where more is asked. */
class DepthsPropertyTest {
  private static final double HAIR_IN = 1e-6;
  private static final DepthTables DEPTHS = new DepthTables(House.engine());

  @Provide
  Arbitrary<Wish> wishes() {
    return RandomWish.any();
  }

  @Provide
  Arbitrary<String> bases() {
    return Arbitraries.of(House.BASES);
  }

  @Property(tries = 40, seed = "19640819", edgeCases = EdgeCasesMode.NONE)
  void a_hole_is_as_deep_as_the_proposal_of_its_structure_has_it(
      @ForAll("wishes") Wish wish, @ForAll("bases") String base) {
    Site site = wish.over(House.base(base));
    Proposal proposal = House.propose(site);
    if (!proposal.proposed()) {
      return;
    }
    Decision decided = proposal.decision(Question.FOOTING_DEPTH).orElseThrow();

    DepthRow row = DEPTHS.row(site, ProposedDesign.of(proposal, site.base()), own(proposal, site));

    assertThat(row.depthIn()).hasValue(inches(decided));
    assertThat(row.governs()).isEqualTo(decided.governing().note().id());
    assertThat(row.diameterIn())
        .hasValue(inches(proposal.decision(Question.HOLE_DIAMETER).orElseThrow()));
  }

  @Property(tries = 15, seed = "19850527", edgeCases = EdgeCasesMode.NONE)
  void more_wind_frost_or_height_never_makes_a_hole_shallower(
      @ForAll("wishes") Wish wish, @ForAll("bases") String base) {
    Site site = wish.over(House.base(base));
    Proposal proposal = House.propose(site);
    if (!proposal.proposed()) {
      return;
    }
    BaseDesign design = ProposedDesign.of(proposal, site.base());
    DepthCase own = own(proposal, site);

    double lessIn = depthIn(site, design, own);
    boolean lifted = DEPTHS.row(site, design, own).governs().equals("footings.depth.uplift");
    for (DepthCase more :
        List.of(
            with(own, own.heightIn(), own.windSpeedMph() + 7, own.frostDepthIn()),
            with(own, own.heightIn(), own.windSpeedMph(), own.frostDepthIn() + 5),
            with(own, own.heightIn() + 4, own.windSpeedMph(), own.frostDepthIn()))) {
      // A taller post weighs more, and against lift alone its weight is worth an inch of hole.
      double weightIn = lifted && more.heightIn() > own.heightIn() ? 1 : HAIR_IN;
      assertThat(depthIn(site, design, more))
          .as("%s", more)
          .isGreaterThanOrEqualTo(lessIn - weightIn);
    }
  }

  /** Where no hole does, it would have to be endlessly deep. */
  private static double depthIn(Site site, BaseDesign design, DepthCase at) {
    return DEPTHS.row(site, design, at).depthIn().orElse(Double.POSITIVE_INFINITY);
  }

  private static DepthCase with(DepthCase own, double heightIn, double windMph, double frostIn) {
    return new DepthCase(
        own.post(), heightIn, own.bayIn(), own.soil(), own.fill(), windMph, frostIn);
  }

  private static DepthCase own(Proposal proposal, Site site) {
    BaseDesign.Posts posts = ProposedDesign.of(proposal, site.base()).posts();
    return new DepthCase(
        posts.size(),
        posts.heightIn(),
        posts.bayIn(),
        ((Outcome.Word) proposal.decision(Question.SOIL).orElseThrow().proposed()).text(),
        posts.backfill().orElse(WayOfBuilding.CONCRETE),
        inches(proposal.decision(Question.WIND_SPEED).orElseThrow()),
        inches(proposal.decision(Question.FROST_DEPTH).orElseThrow()));
  }

  private static double inches(Decision decision) {
    return ((Outcome.Amount) decision.proposed()).measure().amount();
  }
}

package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.scantling.intake.DesignIntake;
import org.scantling.intake.DesignReader;
import org.scantling.intake.DesignWriter;
import org.scantling.intake.Intake;
import org.scantling.intake.SourceText;
import org.scantling.print.ProposedDesign;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** A proposal that is written as a design file and read again checks out as it was proposed. */
class RoundTripTest {
  private static final double HAIR = 1e-9;

  private final Tables tables = Tables.load();
  private final Engine engine = new Engine(RuleBase.load(), tables);
  private final Scenarios scenarios = new Scenarios();

  @Test
  void a_proposal_checks_out_with_the_same_ratios_and_nothing_to_find_fault_with() {
    checkOut(scenarios.everyThird(), 10);
  }

  @Tag("slow")
  @Test
  void every_proposal_checks_out_with_the_same_ratios_and_nothing_to_find_fault_with() {
    checkOut(scenarios.sites(), 15);
  }

  private void checkOut(List<Intake> sites, int most) {
    SoftAssertions all = new SoftAssertions();
    int taken = 0;
    for (Intake site : sites) {
      Proposal proposal = Scenarios.proposal(site);
      if (proposal.proposed()) {
        taken++;
        Review review = check(site, proposal);
        all.assertThat(review.refusal()).as(review.title()).isEmpty();
        all.assertThat(review.limits())
            .as(review.title())
            .allMatch(limit -> toldAsNotAsked(proposal, limit));
        all.assertThat(review.unworked()).as(review.title()).isEmpty();
        all.assertThat(review.passes()).as(review.title()).isEqualTo(review.limits().isEmpty());
        sameRatios(all, proposal, review);
      }
    }
    all.assertAll();
    assertThat(taken).isGreaterThan(most);
  }

  /** What was asked for and could not be: the proposal tells the wish and what stopped it. */
  private static boolean toldAsNotAsked(Proposal proposal, Shortfall limit) {
    return limit.kind() == Shortfall.Kind.NOT_AS_ASKED
        && proposal.decision(limit.question()).orElseThrow().reasons().stream()
            .anyMatch(each -> each.finding().equals(limit.reason().finding()));
  }

  private static void sameRatios(SoftAssertions all, Proposal proposal, Review review) {
    Map<String, Double> found = new LinkedHashMap<>();
    review.checks().forEach(each -> found.put(each.id(), each.check().ratio()));
    all.assertThat(found.keySet())
        .as(review.title())
        .containsExactlyInAnyOrderElementsOf(proposal.checks().stream().map(Checked::id).toList());
    for (Checked each : proposal.checks()) {
      all.assertThat(found.getOrDefault(each.id(), Double.NaN))
          .as(review.title() + ": " + each.id())
          .isCloseTo(each.check().ratio(), within(HAIR));
    }
  }

  private Review check(Intake site, Proposal proposal) {
    String yaml = DesignWriter.yaml(ProposedDesign.of(proposal, site.site().base()));
    DesignIntake design =
        new DesignReader(scenarios.vocabulary())
            .read(new SourceText("design.yaml", 1, yaml, Path.of(".")));
    assertThat(engine.validationErrors(design.design(), site.site())).isEqualTo(List.of());
    return engine.check(site.site(), design.design(), design.defaulted(), site.defaulted());
  }
}

package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** The wind pushes on the pickets that are bought. */
class PicketWindTest {
  private static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);

  @Test
  void metric_pickets_take_the_wind_with_their_45_mm() {
    assertThat(edgeIn("metric")).isCloseTo(45 / 25.4, within(0.001));
  }

  @Test
  void pickets_in_inches_take_it_with_the_edge_of_a_2x4() {
    assertThat(edgeIn("north-america")).isCloseTo(1.5, within(0.001));
  }

  /** Off the working of the side: pickets of one bay, over their length and their number. */
  private static double edgeIn(String market) {
    Intake intake =
        new SiteReader(Vocabulary.of(TABLES))
            .read(
                Path.of("scenarios/metric-country.yaml"),
                List.of(new Setting("materials.market", market)));
    Proposal proposal = ENGINE.propose(intake.site(), intake.defaulted());
    CalculationStep side =
        proposal.trace().stream()
            .filter(each -> each.id().equals("wind.across.solid"))
            .findFirst()
            .orElseThrow();
    Evidence.Seen seen = side.evidence().find("pickets").orElseThrow();
    double areaFt2 = ((Evidence.Seen.Amount) seen).measure().amount();
    return areaFt2 * 144 / lengthIn(proposal) / amount(proposal, Question.PICKETS);
  }

  /** From the top of the rail to the underside of the header on the notched post. */
  private static double lengthIn(Proposal proposal) {
    Geometry geometry = ((Proposal.Result.Proposed) proposal.result()).structure().geometry();
    double underIn = geometry.headerTopIn() - geometry.headers().depthIn();
    String rail =
        ((Outcome.Word) proposal.decision(Question.RAIL_SIZE).orElseThrow().proposed()).text();
    double halfRailIn = TABLES.sizes().row(rail).widthIn() / 2;
    return underIn - amount(proposal, Question.RAIL_HEIGHT) - halfRailIn;
  }

  private static double amount(Proposal proposal, Question question) {
    Measure measure =
        ((Outcome.Amount) proposal.decision(question).orElseThrow().proposed()).measure();
    return measure.amount();
  }
}

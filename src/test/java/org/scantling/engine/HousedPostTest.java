package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** What a rail leaves of a post is worked where the wind bends it hardest. */
class HousedPostTest {
  private static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);

  /**
   * A post in the ground is bent harder the lower down. The 2x4 rail lies 20 in up at its middle,
   * so its housing begins at 20 - 3.5/2 = 18.25 in, and there the moment of the wind is that of the
   * push above it: f (Ft (z - 18.25) + Fs (h - 18.25)^2 / (2 h)).
   */
  @Test
  void a_post_in_the_ground_is_worked_at_the_lower_edge_of_the_housing() {
    Proposal proposal = proposal();
    CalculationStep bent = step(proposal, "post.notch.bent");
    double heightIn = decided(proposal, Question.POST_HEIGHT);
    assertThat(decided(proposal, Question.RAIL_HEIGHT)).isCloseTo(20, within(1e-9));
    assertThat(amount(bent, "beyond")).isCloseTo(heightIn - 18.25, within(1e-6));
    double way = amount(bent, "top") * amount(bent, "arm");
    double spread = amount(bent, "spread") * Math.pow(heightIn - 18.25, 2) / (2 * heightIn);
    assertThat(bent.result().amount())
        .isCloseTo(amount(bent, "factor") * (way + spread), within(0.5));
  }

  private static Proposal proposal() {
    Intake intake =
        new SiteReader(Vocabulary.of(TABLES))
            .read(Path.of("scenarios/same-place.yaml"), List.<Setting>of());
    return ENGINE.propose(intake.site(), intake.defaulted());
  }

  private static CalculationStep step(Proposal proposal, String id) {
    return proposal.trace().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }

  private static double amount(CalculationStep step, String name) {
    Evidence.Seen seen = step.evidence().find(name).orElseThrow();
    return ((Evidence.Seen.Amount) seen).measure().amount();
  }

  private static double decided(Proposal proposal, Question question) {
    return ((Outcome.Amount) proposal.decision(question).orElseThrow().proposed())
        .measure()
        .amount();
  }
}

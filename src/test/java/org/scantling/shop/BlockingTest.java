package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/**
 * Eleven crossbeams of 2x10, five times as deep as thick by their name where NDS 2018, 4.4.1.2
 * wants the ends of what is over four held: 72 in bays of five spaces, so 14.4 in from middle to
 * middle, 12.9 in clear; notched 3/4 in, so 8 1/2 in from the header to their tops.
 */
class BlockingTest {
  private static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);
  private static final Intake SITE =
      new SiteReader(Vocabulary.of(TABLES))
          .read(Path.of("src/test/resources/rulecases/sites/deep-crossbeams.yaml"));
  private static final Proposal PROPOSAL = ENGINE.propose(SITE.site(), SITE.defaulted());

  private final Built built = new Built(PROPOSAL, SITE.site(), TABLES, Optional.empty());
  private final Pieces pieces = Pieces.of(built);

  @Test
  void deep_thin_crossbeams_are_held_upright_by_blocks_and_the_reason_says_so() {
    var decision = PROPOSAL.decision(Question.CROSSBEAM_BLOCKING).orElseThrow();
    assertThat(decision.proposed()).isEqualTo(new Outcome.Word("over-headers"));
    assertThat(decision.governing().note().id())
        .isEqualTo("crossbeams.blocking.depth-to-thickness");
  }

  @Test
  void the_blocks_are_on_the_cut_list_between_each_two_crossbeams_on_both_headers() {
    assertThat(pieces.of("blocking")).hasSize(1);
    Piece block = pieces.of("blocking").get(0);
    assertThat(block.mark()).isEqualTo("B1");
    assertThat(block.count()).isEqualTo(20);
    assertThat(block.shape().size()).isEqualTo("2x10");
    assertThat(block.shape().lengthIn()).isCloseTo(12.875, within(1e-9));
    assertThat(block.shape().depthIn()).isCloseTo(8.5, within(1e-9));
  }

  @Test
  void they_fit_between_the_crossbeams_flush_with_their_tops() {
    new Fitting(built).check();
  }

  @Test
  void their_screws_are_bought_and_the_order_of_work_sets_them() {
    // Twenty blocks, two ends, two screws into the header and two into the crossbeam.
    assertThat(Fixings.of(built, pieces))
        .anyMatch(
            each -> each.use().equals("blocks between crossbeams") && each.count() == 20 * 2 * 4);
    Lists lists = Lists.of(PROPOSAL, SITE.site(), TABLES, Optional.empty());
    assertThat(Occasions.of(built, pieces, lists.climbers())).contains("crossbeam=blocked");
  }
}
